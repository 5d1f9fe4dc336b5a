package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.baywright.model.geometry.Profile;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.parts.Assembly;
import org.baywright.model.parts.Hole;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PartKind;
import org.baywright.render.dimension.Annotations;
import org.baywright.render.dimension.Figure;
import org.baywright.render.dimension.LabelField;
import org.baywright.render.dimension.Notes;
import org.baywright.render.dimension.Paragraph;
import org.baywright.render.dimension.Side;
import org.baywright.render.mark.Arc;
import org.baywright.render.mark.Bounds;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Shift;
import org.baywright.render.mark.Stroke;
import org.baywright.render.mark.Text;
import org.baywright.render.paper.Face;
import org.baywright.render.paper.Pen;
import org.baywright.render.paper.Scale;
import org.baywright.render.view.ViewPort;
import org.locationtech.jts.geom.Envelope;

/**
 * The drawing of a plate: its face with every hole from one corner, its edge, and the outline of the member that stands
 * on it. The face is turned as in the plate's DXF file: depth to the right, width up.
 */
final class PlateBlock {
    /** How many stand beside each other. */
    private static final int ACROSS = 4;

    private static final double LEFT = 24;
    private static final double FACE = 42;
    private static final double EDGE = 86;

    /** From the figures down to the scale. */
    private static final double SCALE = 4.5;

    private static final double TEXT = 2.5;

    private final Part plate;
    private final List<Assembly> holding;
    private final int loose;
    private final double width = SheetFrame.room().getWidth() / ACROSS;

    private PlateBlock(Part plate, List<Assembly> holding, int loose) {
        this.plate = plate;
        this.holding = holding;
        this.loose = loose;
    }

    static Block of(Part plate, List<Assembly> holding, int loose) {
        return new PlateBlock(plate, holding, loose).block();
    }

    private Profile face() {
        return plate.solid().profile();
    }

    private Scale scale() {
        return Scale.fitting(face().depth(), face().width(), FACE, FACE);
    }

    /** The face first, with its rows of figures; the words go above whatever those take. */
    private Block block() {
        Optional<PlateOutline> member = standing();
        Scale scale = scale();
        double w = scale.toPaper(face().depth());
        double h = scale.toPaper(face().width());
        ViewPort port = new ViewPort(scale, new Vec2(-face().depth() / 2, face().width() / 2), new Vec2(LEFT, 0));
        List<Mark> marks = new ArrayList<>();
        marks.add(ring(port, face().outline(), Pen.OUTLINE));
        member.ifPresent(outline -> marks.add(ring(port, outline.ring(), Pen.HIDDEN)));
        plate.holes().forEach(hole -> hole(marks, port, hole));
        edge(marks, h, scale.toPaper(plate.solid().axisLength()));
        marks.addAll(dimensions(port, new Envelope(LEFT, LEFT + w, -h, 0), member, List.copyOf(marks)));
        double foot = Bounds.of(marks).getMinY() - SCALE;
        marks.add(Text.level(scale + " @ A3", new Vec2(LEFT, foot), TEXT, Text.Align.LEFT, Layer.LABEL));
        Notes notes = Notes.of(words(), width - 6);
        Vec2 down = new Vec2(0, -notes.height() - 2 - Bounds.of(marks).getMaxY());
        List<Mark> all = new ArrayList<>(notes.draw(new Vec2(0, 0)));
        all.addAll(Shift.by(down, marks));
        return new Block(plate.mark(), width, -Bounds.of(all).getMinY() + 1, all);
    }

    private Stroke ring(ViewPort port, List<Vec2> ring, Pen pen) {
        return new Stroke(
                ring.stream().map(port::toPaper).toList(),
                true,
                pen,
                pen == Pen.HIDDEN ? Layer.STEEL : Layer.PLATE,
                plate.mark());
    }

    private void hole(List<Mark> marks, ViewPort port, Hole hole) {
        Vec2 at = port.toPaper(hole.at());
        double radius = port.toPaper(hole.diameter() / 2);
        marks.add(
                hole.isSlot()
                        ? ring(port, hole.outline(), Pen.VISIBLE)
                        : Arc.circle(at, radius, Pen.VISIBLE, Layer.PLATE, plate.mark()));
        Vec2 right = new Vec2(radius + port.toPaper(Math.abs(hole.run().x()) / 2) + 1.2, 0);
        Vec2 up = new Vec2(0, radius + port.toPaper(Math.abs(hole.run().y()) / 2) + 1.2);
        marks.add(Stroke.line(at.minus(right), at.plus(right), Pen.DIMENSION, Layer.PLATE));
        marks.add(Stroke.line(at.minus(up), at.plus(up), Pen.DIMENSION, Layer.PLATE));
    }

    private void edge(List<Mark> marks, double height, double thickness) {
        marks.add(new Stroke(
                List.of(
                        new Vec2(EDGE - thickness / 2, 0),
                        new Vec2(EDGE + thickness / 2, 0),
                        new Vec2(EDGE + thickness / 2, -height),
                        new Vec2(EDGE - thickness / 2, -height)),
                true,
                Pen.VISIBLE,
                Layer.PLATE,
                plate.mark()));
        marks.add(Text.level(
                "t " + Figure.length(plate.solid().axisLength()),
                new Vec2(EDGE, -height - TEXT - 1.5),
                TEXT,
                Text.Align.CENTRE,
                Layer.DIMENSION));
    }

    private List<Mark> dimensions(ViewPort port, Envelope box, Optional<PlateOutline> member, List<Mark> there) {
        LabelField field = new LabelField(new Envelope(-1, width, -400, 400));
        field.drawn(there.stream().filter(m -> m instanceof Text).toList());
        Annotations annotate = new Annotations(field, port, box);
        double x = face().depth() / 2;
        double y = face().width() / 2;
        Vec2 corner = new Vec2(-x, -y);
        List<Vec2> below = new ArrayList<>(List.of(new Vec2(x, -y)));
        List<Vec2> beside = new ArrayList<>(List.of(new Vec2(-x, y)));
        plate.holes().forEach(h -> below.add(new Vec2(h.at().x(), -y)));
        plate.holes().forEach(h -> beside.add(new Vec2(-x, h.at().y())));
        annotate.running(Side.BELOW, corner, below).running(Side.LEFT, corner, beside);
        member.ifPresent(outline -> {
            Envelope around = outline.box();
            annotate.running(
                    Side.ABOVE, new Vec2(-x, y), List.of(new Vec2(around.getMinX(), y), new Vec2(around.getMaxX(), y)));
            annotate.running(
                    Side.RIGHT, new Vec2(x, -y), List.of(new Vec2(x, around.getMinY()), new Vec2(x, around.getMaxY())));
        });
        return annotate.marks();
    }

    /** The outline of the member that stands on an end plate, when it is the same on all of them. */
    private Optional<PlateOutline> standing() {
        List<PlateOutline> outlines = PlateOutline.of(plate, holding);
        return outlines.size() == 1 ? Optional.of(outlines.get(0)) : Optional.empty();
    }

    private List<Paragraph> words() {
        List<Paragraph> words = new ArrayList<>();
        words.add(new Paragraph("", plate.mark() + "  " + plate.kind().label(), Face.BOLD));
        words.add(Paragraph.of(OrderTables.plate(plate.material().designation(), plate.stockLength()) + ", grade "
                + plate.material().grade() + ". " + plate.quantity() + " off, " + MemberBlock.kg(plate.massKg())
                + " kg each."));
        slope().ifPresent(cut -> words.add(Paragraph.of(cut)));
        words.add(Paragraph.of(holes()));
        words.add(Paragraph.of(use()));
        if (PlateOutline.of(plate, holding).stream().anyMatch(o -> o.isButted(plate))) {
            words.add(Paragraph.of(
                    "Where its edge leaves no ledge beside the member: butt weld, or as the engineer shows."));
        }
        return words;
    }

    /** The long sides of a plate with an edge cut to a slope. */
    private Optional<String> slope() {
        double left = side(p -> p.y() < 0);
        double right = side(p -> p.y() > 0);
        return Math.abs(left - right) < 0.05
                ? Optional.empty()
                : Optional.of("One edge cut to a slope: sides " + Figure.length(Math.max(left, right)) + " and "
                        + Figure.length(Math.min(left, right)) + ", as drawn.");
    }

    private double side(Predicate<Vec2> of) {
        var along = face().outline().stream().filter(of).mapToDouble(Vec2::x).summaryStatistics();
        return along.getMax() - along.getMin();
    }

    private String holes() {
        if (plate.holes().isEmpty()) {
            return "No holes.";
        }
        Function<Hole, List<Double>> size = h -> List.of(h.diameter(), h.length());
        Collection<List<Hole>> alike = plate.holes().stream()
                .sorted(Comparator.comparingDouble(Hole::diameter).thenComparingDouble(Hole::length))
                .collect(Collectors.groupingBy(size, LinkedHashMap::new, Collectors.toList()))
                .values();
        return alike.stream()
                        .map(holes -> Annotations.holeWords(holes.size(), holes.get(0)))
                        .collect(Collectors.joining(", "))
                + ", middles from the lower left corner.";
    }

    /** How many go to each member, and what the model leaves without one. */
    private String use() {
        Map<String, Integer> members = new LinkedHashMap<>();
        for (Assembly assembly : holding) {
            int each = assembly.counts().get(plate.mark());
            members.merge(assembly.member().mark(), each * assembly.quantity(), Integer::sum);
        }
        String welded = members.entrySet().stream()
                .map(e -> e.getValue() + " on " + e.getKey())
                .collect(Collectors.joining(", "));
        String apart = loose == 0 ? "" : loose + " that no member meets: fix as the engineer shows";
        boolean lifting = plate.kind() == PartKind.LIFTING_PLATE;
        String shop = lifting ? "Welded to the bracket in the shop: " : "Welded: ";
        String site = lifting ? "no bolts, the beam is welded to it on site, or as the engineer shows" : "";
        return Stream.of(welded.isEmpty() ? "" : shop + welded, apart, site)
                        .filter(s -> !s.isEmpty())
                        .collect(Collectors.joining("; "))
                + ".";
    }
}
