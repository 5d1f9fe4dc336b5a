package org.baywright.render.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.baywright.model.cladding.Building;
import org.baywright.model.definition.Definitions;
import org.baywright.model.geometry.Vec2;
import org.baywright.render.dimension.TurnedBox;
import org.baywright.render.mark.Arc;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Text;
import org.junit.jupiter.api.Test;

/** Words beside the titles of elevations. */
class ElevationSheetsTest {
    private static final String TALL =
            "span: 5900\nbays: 3\nbaySpacing: [6900, 6800, 4900]\neaveHeight: 5300\nroofPitch: 23.5\n"
                    + "purlins: {section: RHS 100x50x3}\nroofSheets: {profile: trapezoidal 0.42}\n"
                    + "openings: [{type: window, wall: left, bay: 1, width: 2000, height: 2000}]\n";

    /** At 1:100 the bubbles of the lower view reach down to 15 mm over its foot, where a key of three lines lay on two. */
    @Test
    void theKeyOfFinishesKeepsOffGridFigures() {
        Draft sides = ElevationSheets.of(Building.of(Definitions.of(TALL))).get(1);
        assertEquals("S3.2", sides.number());
        List<Text> words = Sheds.texts(sides).toList();
        assertTrue(words.stream().anyMatch(t -> t.content().contains("trapezoidal 0.42")), "a key of finishes");
        for (Mark mark : sides.marks()) {
            if (mark instanceof Arc bubble && bubble.sweepDeg() == 360) {
                words.forEach(t -> assertTrue(inside(t, bubble) || apart(t, bubble), () -> t + " on " + bubble));
            }
        }
    }

    private static boolean inside(Text text, Arc bubble) {
        return TurnedBox.of(text).corners().stream().allMatch(c -> c.distance(bubble.centre()) < bubble.radius());
    }

    private static boolean apart(Text text, Arc bubble) {
        Vec2 c = bubble.centre();
        double r = bubble.radius();
        return !TurnedBox.of(text).overlaps(TurnedBox.upright(c.x() - r, c.y() - r, c.x() + r, c.y() + r));
    }
}
