package org.baywright.model.parts;

import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.baywright.model.definition.Wall;
import org.baywright.model.setout.ColumnLine;
import org.baywright.model.setout.OpeningPlace;
import org.baywright.model.setout.WallCover;
import org.baywright.model.setout.WallFace;
import org.baywright.model.setout.WallPosts;

/**
 * The uprights of the end walls under a slope's end rafters.
 *
 * @param bays the slope along the building
 */
record EndUprights(RowBays bays) {
    /** Where they stand across the span at a frame; none at a frame between. */
    DoubleStream across(int frame) {
        if (!bays.isEnd(frame)) {
            return DoubleStream.empty();
        }
        Wall wall = frame == bays.first() ? Wall.FRONT : Wall.REAR;
        List<WallFace> faces = WallFace.of(bays.definition(), bays.setOut());
        List<OpeningPlace> openings = OpeningPlace.of(bays.definition(), faces);
        ColumnLine line = bays.rows().slope().line();
        return WallCover.of(bays.definition(), bays.setOut(), faces).stream()
                .filter(c -> c.face().wall() == wall)
                .filter(c -> c.face().leanTo().equals(line.leanTo() ? Optional.of(line) : Optional.empty()))
                .flatMap(c -> WallPosts.of(bays.definition(), c, openings).posts().stream()
                        .map(p -> c.face().toWorld(p.u(), 0, 0).x()))
                .mapToDouble(x -> x);
    }
}
