package org.baywright.render.sheet;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.baywright.model.definition.Member;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.Hole;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Place;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.ColumnLine;
import org.baywright.render.view.HiddenLines;
import org.baywright.render.view.Item;
import org.baywright.render.view.Projection;
import org.baywright.render.view.ViewLine;

/**
 * One frame seen from the front: its lines, its anchors and where its parts lie, in view millimetres.
 *
 * @param shed the building
 * @param frame frame number
 * @param lines edges that are seen
 */
record FrameView(Shed shed, int frame, List<ViewLine> lines) {
    private static final Projection FRONT = Projection.front();

    /** How far an anchor stands above its plate, for nut and thread. */
    private static final double ABOVE_PLATE = 30;

    /** Frames at the ends of the building stand inside their lines. */
    private static final double NEAR_LINE = 400;

    static FrameView of(Shed shed, int frame) {
        return new FrameView(shed, frame, HiddenLines.visible(Steelwork.frame(shed, frame), FRONT));
    }

    /** The same frame, bare: columns, rafters, plates, and what carries a lifting beam. */
    FrameView bare() {
        List<Item> steel = Steelwork.items(
                shed, (part, place) -> isHere(part, place) && part.kind().isOfFrame() && stands(part, place));
        return new FrameView(shed, frame, HiddenLines.visible(steel, FRONT));
    }

    List<Item> items() {
        return Steelwork.frame(shed, frame);
    }

    /** A part of the frame and one place of it. */
    record Standing(Part part, Place place) {
        /** Its centre of gravity in the view. */
        Vec2 middle() {
            return FRONT.flat(place.placement().toWorld(part.solid().centreOfGravity()));
        }
    }

    /** A lifting beam along the building belongs to each frame that it passes. */
    private boolean isHere(Part part, Place place) {
        double from = place.placement().origin().y();
        double to = from + place.placement().along().y() * part.solid().axisLength();
        double line = shed.setOut().frameLine(frame);
        boolean passed = part.kind() == PartKind.LIFTING_BEAM && from < line + NEAR_LINE && to > line - NEAR_LINE;
        return place.frame() == frame || passed;
    }

    /** Base plates of mullions and jambs stand beside the frame. */
    private boolean stands(Part part, Place place) {
        return part.kind() != PartKind.BASE_PLATE
                || shed.setOut().columnLines().stream()
                        .filter(l -> l.has(frame))
                        .anyMatch(l -> isUnder(l, place.placement().origin()));
    }

    private boolean isUnder(ColumnLine line, Vec3 plate) {
        Member column = line.column(shed.definition(), frame);
        double across = line.x() + line.inward() * column.depth() / 2 - plate.x();
        double along = shed.setOut().frameLine(frame) - plate.y();
        return Math.abs(across) < 1 && Math.abs(along) < column.width() / 2 + 1;
    }

    /** The parts of the frame of one kind, from left to right. */
    List<Standing> standing(PartKind kind) {
        return shed.parts(kind).stream()
                .flatMap(part -> part.places().stream()
                        .filter(p -> isHere(part, p) && stands(part, p))
                        .map(p -> new Standing(part, p)))
                .sorted(Comparator.comparingDouble(s -> s.middle().x()))
                .toList();
    }

    /** The first standing of every mark of a kind. */
    List<Standing> distinct(PartKind kind) {
        List<Standing> all = standing(kind);
        return all.stream()
                .filter(s -> all.stream()
                                .filter(o -> o.part().mark().equals(s.part().mark()))
                                .findFirst()
                                .orElseThrow()
                        == s)
                .toList();
    }

    /** Anchors as upright lines from the bottom of their holes to above the plates. */
    List<ViewLine> anchors() {
        double depth = shed.definition().anchor().embedment();
        return standing(PartKind.BASE_PLATE).stream()
                .flatMap(s -> s.part().holes().stream().map(h -> anchor(s, h, depth)))
                .distinct()
                .toList();
    }

    private static ViewLine anchor(Standing plate, Hole hole, double depth) {
        Vec3 top = plate.place()
                .placement()
                .toWorld(
                        plate.part().solid().axisLength(),
                        hole.at().x(),
                        hole.at().y());
        return new ViewLine(
                FRONT.flat(new Vec3(top.x(), 0, -depth)), FRONT.flat(new Vec3(top.x(), 0, top.z() + ABOVE_PLATE)), "");
    }

    /** What a part is, for a label: mark, then section or plate size. */
    static String[] words(Part part) {
        String size = part.kind().isMember()
                ? part.material().description()
                : OrderTables.plate(part.material().designation(), part.stockLength());
        return new String[] {part.mark() + "  " + size};
    }

    static Stream<PartKind> plates() {
        return Stream.of(
                PartKind.BASE_PLATE,
                PartKind.CAP_PLATE,
                PartKind.KNEE_PLATE,
                PartKind.APEX_PLATE,
                PartKind.LEAN_TO_PLATE,
                PartKind.LIFTING_PLATE);
    }

    static Stream<PartKind> members() {
        return Stream.of(PartKind.values()).filter(PartKind::isMember);
    }
}
