package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.baywright.model.definition.Member;
import org.baywright.model.definition.RoofShape;
import org.baywright.model.definition.Side;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.ColumnLine;
import org.baywright.model.setout.SetOut;
import org.locationtech.jts.geom.Envelope;

/**
 * A joint of a frame that is shown close up.
 *
 * @param title of the detail
 * @param centre in the view from the front, mm
 * @param reach half of what must be seen, mm across and up
 * @param line the column line it is at
 * @param kinds the parts that are named on it
 */
record Joint(String title, Vec2 centre, Vec2 reach, ColumnLine line, List<PartKind> kinds) {
    /** So much of a column is seen over its base plate. */
    private static final double STUB = 75;

    /** So much is seen below the concrete. */
    private static final double BELOW = 5;

    /** The concrete's edge is seen when it is no further outside a base plate. */
    private static final double EDGE = 160;

    /** So much is seen beside the concrete's edge and the plate. */
    private static final double ASIDE = 10;

    /** The joints of a frame that differ, from the outside in. */
    static List<Joint> of(Shed shed, int frame) {
        SetOut setOut = shed.setOut();
        boolean gable = shed.definition().shape().roofShape() == RoofShape.GABLE;
        List<Joint> joints = new ArrayList<>();
        ColumnLine left = setOut.main(Side.LEFT);
        ColumnLine right = setOut.main(Side.RIGHT);
        boolean alike = gable && marks(shed, frame, Side.LEFT).equals(marks(shed, frame, Side.RIGHT));
        joints.add(knee(shed, left, frame));
        if (!alike) {
            joints.add(knee(shed, right, frame));
        }
        if (gable) {
            joints.add(apex(shed, frame));
        }
        setOut.leanTos().stream().filter(l -> l.has(frame)).forEach(l -> joints.add(leanTo(shed, l, frame)));
        setOut.leanTos().stream().filter(l -> l.has(frame)).forEach(l -> joints.add(knee(shed, l, frame)));
        joints.add(base(shed, left, frame));
        return joints;
    }

    /** The marks of the main frame on one side; alike on both, one knee stands for two. */
    private static Set<String> marks(Shed shed, int frame, Side side) {
        return Stream.of(PartKind.COLUMN, PartKind.RAFTER, PartKind.CAP_PLATE, PartKind.KNEE_PLATE)
                .flatMap(kind -> shed.parts(kind).stream())
                .filter(part -> part.places().stream().anyMatch(p -> p.frame() == frame && p.side() == side))
                .map(Part::mark)
                .collect(Collectors.toSet());
    }

    private static Vec2 both(double reach) {
        return new Vec2(reach, reach);
    }

    private static Member column(Shed shed, ColumnLine line, int frame) {
        return line.column(shed.definition(), frame);
    }

    private static Member rafter(Shed shed, ColumnLine line, int frame) {
        return line.rafter(shed.definition(), frame);
    }

    private static Joint knee(Shed shed, ColumnLine line, int frame) {
        double column = column(shed, line, frame).depth();
        double rafter = rafter(shed, line, frame).depth();
        Vec2 centre = new Vec2(line.x() + line.inward() * column / 2, line.eaveHeight() - rafter);
        List<PartKind> kinds = line.leanTo()
                ? List.of(PartKind.LEAN_TO_COLUMN, PartKind.LEAN_TO_RAFTER, PartKind.CAP_PLATE)
                : List.of(PartKind.COLUMN, PartKind.RAFTER, PartKind.CAP_PLATE, PartKind.KNEE_PLATE);
        return new Joint(
                (line.leanTo() ? "EAVE, LINE " : "KNEE, LINE ") + line.letter(),
                centre,
                both(1.5 * Math.max(column, rafter)),
                line,
                kinds);
    }

    private static Joint apex(Shed shed, int frame) {
        ColumnLine left = shed.setOut().main(Side.LEFT);
        double rafter = rafter(shed, left, frame).depth();
        Vec2 centre = new Vec2(
                shed.setOut().span() / 2,
                shed.setOut().apexHeight() - left.roof().plumb(rafter) / 2);
        return new Joint("APEX", centre, both(1.5 * rafter), left, List.of(PartKind.RAFTER, PartKind.APEX_PLATE));
    }

    private static Joint leanTo(Shed shed, ColumnLine line, int frame) {
        ColumnLine main = shed.setOut().main(line.side());
        double rafter = rafter(shed, line, frame).depth();
        double column = column(shed, main, frame).depth();
        Vec2 centre = new Vec2(main.x(), line.roof().heightAt(main.x()) - rafter / 2);
        return new Joint(
                "LEAN-TO, LINE " + main.letter(),
                centre,
                both(1.5 * Math.max(column, rafter)),
                line,
                List.of(PartKind.COLUMN, PartKind.LEAN_TO_RAFTER, PartKind.LEAN_TO_PLATE));
    }

    private static Joint base(Shed shed, ColumnLine line, int frame) {
        double column = column(shed, line, frame).depth();
        List<Part> plates = shed.parts(PartKind.BASE_PLATE).stream()
                .filter(part -> part.places().stream().anyMatch(p -> p.frame() == frame))
                .toList();
        double plate =
                plates.stream().mapToDouble(p -> p.solid().axisLength()).max().orElse(0);
        double half = plates.stream()
                        .mapToDouble(p -> p.solid().profile().depth())
                        .max()
                        .orElse(column)
                / 2;
        double high = shed.definition().plates().groutGap() + plate + STUB;
        Envelope concrete = new SlabSection(shed, frame).bounds();
        double depth = Math.max(shed.definition().anchor().embedment(), -concrete.getMinY());
        double middle = line.x() + line.inward() * column / 2;
        double left = Math.max(middle - half - EDGE, concrete.getMinX()) - ASIDE;
        double right = middle + half + ASIDE;
        return new Joint(
                "BASE, LINE " + line.letter(),
                new Vec2((left + right) / 2, (high - depth - BELOW) / 2),
                new Vec2((right - left) / 2, (high + depth + BELOW) / 2),
                line,
                List.of(PartKind.COLUMN, PartKind.BASE_PLATE));
    }

    boolean isBase() {
        return kinds.contains(PartKind.BASE_PLATE);
    }
}
