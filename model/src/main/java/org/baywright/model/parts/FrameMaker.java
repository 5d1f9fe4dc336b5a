package org.baywright.model.parts;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.KneeJoint;
import org.baywright.model.definition.Member;
import org.baywright.model.definition.Plates;
import org.baywright.model.definition.RoofShape;
import org.baywright.model.definition.Side;
import org.baywright.model.geometry.Tolerance;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.setout.ColumnLine;
import org.baywright.model.setout.RoofLine;
import org.baywright.model.setout.SetOut;

/** Makes the pieces of one frame: columns, rafters and their plates, then the lean-tos that it carries. */
final class FrameMaker {
    private final Definition definition;
    private final Plates plates;
    private final SetOut setOut;
    private final int frame;
    private final List<Piece> pieces = new ArrayList<>();
    private final List<Vec3> anchors = new ArrayList<>();

    FrameMaker(Definition definition, SetOut setOut, int frame) {
        this.definition = definition;
        this.plates = definition.plates();
        this.setOut = setOut;
        this.frame = frame;
        main(Side.LEFT);
        main(Side.RIGHT);
        rafters();
        setOut.leanTos().stream().filter(line -> line.has(frame)).forEach(this::leanTo);
    }

    List<Piece> pieces() {
        return pieces;
    }

    List<Vec3> anchors() {
        return anchors;
    }

    private boolean butted() {
        return definition.shape().kneeJoint() == KneeJoint.BUTTED;
    }

    private Member column(Side side) {
        return setOut.main(side).column(definition, frame);
    }

    /** The frame's two rafters share one middle. */
    private double rafterMiddle() {
        return setOut.rafterMiddle(definition, setOut.main(Side.LEFT), frame);
    }

    private void main(Side side) {
        Member member = column(side);
        ColumnMaker column = column(PartKind.COLUMN, member, setOut.main(side));
        double cap = plates.capThickness();
        Member rafter = definition.rafterAt(frame, side);
        stand(column, butted() ? cap : cap + rafter.depth());
        if (cap > 0) {
            pieces.add(
                    butted()
                            ? column.closingCap(cap)
                            : column.seatingCap(
                                    cap, rafter.depth(), rafter.width(), rafterMiddle(), closed() || continued(side)));
        }
    }

    /** Whether girts may pass outside the columns, so that caps must end flush with them. */
    private boolean closed() {
        return definition.envelope().isFull();
    }

    /** Whether a lean-to's rafter carries on the main roof line here, so that the cap must end flush outside. */
    private boolean continued(Side side) {
        return setOut.leanTos().stream()
                .anyMatch(line -> line.side() == side
                        && line.has(frame)
                        && Tolerance.same(
                                line.roof().height(), setOut.main(side).eaveHeight()));
    }

    private ColumnMaker column(PartKind kind, Member member, ColumnLine line) {
        BaseDesign base = BaseDesign.of(
                kind == PartKind.COLUMN ? plates.base() : plates.leanToBase(), member, definition.anchor());
        double middle = setOut.middle(frame, member.width());
        return new ColumnMaker(kind, member, line, frame, middle, base, plates.groutGap());
    }

    private void stand(ColumnMaker column, double below) {
        pieces.add(column.column(below));
        pieces.add(column.basePlate());
        anchors.addAll(column.anchorHoles());
    }

    private void rafters() {
        if (definition.shape().roofShape() == RoofShape.SKILLION) {
            pieces.add(rafter(Side.LEFT).between(eaveEnd(Side.LEFT), eaveEnd(Side.RIGHT)));
            knee(Side.LEFT);
            knee(Side.RIGHT);
        } else {
            gable(Side.LEFT);
            gable(Side.RIGHT);
        }
    }

    private void gable(Side side) {
        RafterMaker rafter = rafter(side);
        double ridge = setOut.span() / 2;
        double thickness = plates.apexThickness();
        double end = ridge - setOut.main(side).inward() * (thickness > 0 ? thickness : HALF_ROOT_GAP);
        pieces.add(rafter.between(eaveEnd(side), end));
        knee(side);
        if (thickness > 0) {
            ApexDesign design = ApexDesign.of(
                    definition.rafterAt(frame, Side.LEFT), definition.rafterAt(frame, Side.RIGHT), rafter.roof());
            pieces.add(rafter.apexPlate(design, ridge, end));
        }
    }

    /** Half the root gap of a butt weld at the ridge without plates. Common practice, no source. */
    private static final double HALF_ROOT_GAP = 1.5;

    private RafterMaker rafter(Side side) {
        RoofLine roof = setOut.main(side).roof();
        return new RafterMaker(PartKind.RAFTER, definition.rafterAt(frame, side), roof, rafterMiddle(), frame, side);
    }

    /** Where the rafter ends at the eave: past the outside face when seated, short of the inside face when butted. */
    private double eaveEnd(Side side) {
        ColumnLine line = setOut.main(side);
        double inside = butted() ? column(side).depth() + plates.kneeThickness() : -plates.rafterOverhang();
        return line.x() + line.inward() * inside;
    }

    private void knee(Side side) {
        if (butted() && plates.kneeThickness() > 0) {
            ColumnLine line = setOut.main(side);
            double face = line.x() + line.inward() * column(side).depth();
            pieces.add(rafter(side).endPlate(PartKind.KNEE_PLATE, face, eaveEnd(side)));
        }
    }

    private void leanTo(ColumnLine line) {
        Member member = line.column(definition, frame);
        Member rafterMember = line.rafter(definition, frame);
        ColumnMaker column = column(PartKind.LEAN_TO_COLUMN, member, line);
        double middle = setOut.rafterMiddle(definition, line, frame);
        double cap = plates.capThickness();
        stand(column, rafterMember.depth() + cap);
        if (cap > 0) {
            pieces.add(column.seatingCap(cap, rafterMember.depth(), rafterMember.width(), middle, closed()));
        }
        RafterMaker rafter =
                new RafterMaker(PartKind.LEAN_TO_RAFTER, rafterMember, line.roof(), middle, frame, line.side());
        double face = setOut.main(line.side()).x();
        double inner = face - line.inward() * plates.leanToGap();
        pieces.add(rafter.between(line.x() - line.inward() * plates.rafterOverhang(), inner));
        if (plates.leanToGap() > 0) {
            pieces.add(rafter.endPlate(PartKind.LEAN_TO_PLATE, face, inner));
        }
    }
}
