package org.baywright.model.setout;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Opening;

/**
 * Where a sliding door's track wants a girt behind it past the door: beside the jambs, at the head, as far as its leaves
 * travel. Over the opening itself the header and the girt before it hold the track. Common practice, no source.
 *
 * <pre>
 *    column         jamb  jamb          column
 *      |  track girt |-----| track girt    |
 *      |=============|     |===============|
 * </pre>
 *
 * @param door the sliding door
 * @param leaf how it moves
 * @param stand how the wall's girts stand on their lines
 */
public record TrackGirt(OpeningPlace door, SlidingLeaf leaf, RowStand stand) {
    /** A track is fixed to steel that begins at the door's head and lies no higher than this over it. */
    public static final double BAND = 2 * SlidingLeaf.LAP;

    /** The tracks of a building's sliding doors. */
    public static List<TrackGirt> of(Definition definition, List<OpeningPlace> openings) {
        return openings.stream()
                .filter(o -> o.opening().type() == Opening.Type.SLIDING_DOOR && !o.isWholeBay())
                .map(o -> new TrackGirt(o, new SlidingLeaf(o), GirtRows.stand(definition)))
                .toList();
    }

    /** Heights of all girts of the walls that are wanted: their rows, and those behind tracks. */
    public static Stream<Double> withRows(
            Definition definition, SetOut setOut, List<OpeningPlace> openings, Predicate<WallFace> wanted) {
        List<WallFace> faces = WallFace.of(definition, setOut);
        Stream<Double> rows = WallCover.of(definition, setOut, faces).stream()
                .filter(cover -> wanted.test(cover.face()))
                .flatMap(cover -> GirtRows.of(definition, setOut, cover).at().stream());
        Stream<Double> behindTracks = of(definition, openings).stream()
                .filter(track -> wanted.test(track.door().face()))
                .map(TrackGirt::height);
        return Stream.concat(rows, behindTracks);
    }

    /** The height of its back, as that of the girt before the header: its steel stands on the line of the head. */
    public double height() {
        return door.head() + stand.reachDown();
    }

    /** Whether a length of the wall beside the door is wanted: tracks may pass their last fixing by a lap. */
    public boolean wants(double from, double to) {
        double middle = (from + to) / 2;
        double over = Math.min(to, leaf.trackTo()) - Math.max(from, leaf.trackFrom());
        return over > SlidingLeaf.LAP && !(middle > door.left() && middle < door.right());
    }

    /** Whether the track can be fixed to a row at a height: to the middle of its steel. */
    public boolean isHeldBy(double row) {
        double middle = row + (stand.reachUp() - stand.reachDown()) / 2;
        return middle >= door.head() && middle <= door.head() + BAND;
    }
}
