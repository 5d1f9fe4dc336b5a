package org.baywright.model.setout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Wall;
import org.baywright.model.setout.WallFace.WallBay;

/**
 * A bay of a wall that is sheeted, and from what height. Sheets run from there to the roof; girts carry them there.
 *
 * <p>Common practice, no source: the walls of a lean-to are open unless asked for, and so is the main wall below a
 * lean-to's roof; what stands above that roof is closed when there is room for a strip of sheet.
 *
 * @param face the wall
 * @param bay the bay
 * @param low where the sheets start: zero at the floor, higher above a lean-to's roof
 */
public record WallCover(WallFace face, WallBay bay, double low) {
    /** A lower strip than this is closed by the apron flashing alone. */
    private static final double LEAST_STRIP = 150;

    /** What is sheeted of every wall. */
    public static List<WallCover> of(Definition definition, SetOut setOut, List<WallFace> faces) {
        List<OpeningPlace> openings = OpeningPlace.of(definition, faces);
        List<WallCover> covers = new ArrayList<>();
        for (WallFace face : faces) {
            for (WallBay bay : face.bays()) {
                boolean open = openings.stream()
                        .anyMatch(o ->
                                o.isWholeBay() && o.face() == face && o.bay().equals(bay));
                OptionalDouble low = open ? OptionalDouble.empty() : low(definition, setOut, face, bay);
                low.ifPresent(from -> covers.add(new WallCover(face, bay, from)));
            }
        }
        return covers;
    }

    private static OptionalDouble low(Definition definition, SetOut setOut, WallFace face, WallBay bay) {
        boolean wanted = face.isMain()
                ? definition.envelope().sheeting().behindLeanTos()
                : definition.envelope().sheeting().leanToWalls();
        Optional<ColumnLine> before = face.isMain() ? leanToBefore(setOut, face, bay) : Optional.empty();
        if (wanted || face.isMain() && before.isEmpty()) {
            return OptionalDouble.of(0);
        }
        return before.map(lean -> strip(definition, face, lean)).orElse(OptionalDouble.empty());
    }

    /** The lean-to that hides a bay of a main wall. */
    public static Optional<ColumnLine> leanToBefore(SetOut setOut, WallFace face, WallBay bay) {
        return setOut.leanTos().stream()
                .filter(l -> !face.wall().isEnd() && Wall.of(l.side()) == face.wall())
                .filter(l -> bay.bay() >= l.firstFrame() && bay.bay() < l.lastFrame())
                .findFirst();
    }

    private static OptionalDouble strip(Definition definition, WallFace face, ColumnLine lean) {
        double x = face.axes().origin().x();
        double purlin = definition.envelope().purlins().member().depth();
        double low = lean.roof().heightAt(x) + lean.roof().plumb(purlin);
        return face.heightAt(0) - low < LEAST_STRIP ? OptionalDouble.empty() : OptionalDouble.of(low);
    }
}
