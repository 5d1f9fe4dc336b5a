package org.baywright.render.dimension;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.baywright.model.geometry.Vec2;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Stroke;
import org.baywright.render.paper.Pen;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;

class LabelFieldTest {
    private static final Envelope FRAME = new Envelope(0, 400, 0, 280);

    private final LabelField field = new LabelField(FRAME);
    private final Vec2 middle = new Vec2(200, 140);

    @Test
    void wordsStandRightBesideAFreePoint() {
        PlacedLabel placed = field.place(Label.of(middle, Label.Pointer.BESIDE, "C1"));
        assertTrue(placed.leader().isEmpty());
        assertTrue(placed.box().envelope().getMinX() > middle.x());
    }

    @Test
    void wordsGoWhereTheyAreWanted() {
        Label label = Label.of(middle, Label.Pointer.BESIDE, "C1").preferring(Spot.BELOW);
        assertTrue(field.place(label).box().envelope().getMaxY() < middle.y());
    }

    @Test
    void aLeaderReachesOutOfAnObstacle() {
        field.obstacle(new Envelope(150, 250, 100, 180));
        PlacedLabel placed = field.place(Label.of(middle, Label.Pointer.BESIDE, "C1"));
        assertFalse(placed.leader().isEmpty());
        assertFalse(placed.box().envelope().intersects(new Envelope(150.001, 249.999, 100.001, 179.999)));
    }

    @Test
    void wordsKeepOffALineWhenThereIsRoomBesideIt() {
        List<Mark> line = List.of(Stroke.line(new Vec2(201, 0), new Vec2(201, 280), Pen.OUTLINE, Layer.STEEL));
        field.drawn(line);
        PlacedLabel placed = field.place(Label.of(middle, Label.Pointer.BESIDE, "SHS 100×100×5"));
        assertFalse(field.onLines(placed.box()));
    }

    @Test
    void aFullSheetIsAnError() {
        LabelField small = new LabelField(new Envelope(0, 30, 0, 10));
        small.place(Label.of(new Vec2(5, 5), Label.Pointer.BESIDE, "takes it all"));
        Label second = Label.of(new Vec2(5, 5), Label.Pointer.BESIDE, "takes it all");
        assertThrows(IllegalStateException.class, () -> small.place(second));
    }

    @Test
    void fiveHundredLabelsArePlacedQuicklyAndApart() {
        Random random = new Random(1);
        List<Label> labels = new ArrayList<>();
        for (int i = 0; i < 500; i++) {
            Vec2 target = new Vec2(10 + random.nextDouble() * 380, 10 + random.nextDouble() * 260);
            labels.add(Label.of(target, Label.Pointer.DOT, "mark " + i));
        }
        List<Mark> marks = new ArrayList<>();
        List<PlacedLabel> placed = Assertions.assertTimeout(Duration.ofSeconds(20), () -> field.place(labels));
        placed.forEach(p -> marks.addAll(p.marks()));
        assertEquals(500, placed.size());
        Overlaps.assertNone(marks, FRAME);
    }
}
