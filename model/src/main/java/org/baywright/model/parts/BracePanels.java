package org.baywright.model.parts;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.baywright.model.catalogue.BarSection;
import org.baywright.model.catalogue.BeamSection;
import org.baywright.model.catalogue.Section;
import org.baywright.model.definition.KneeJoint;
import org.baywright.model.definition.Member;
import org.baywright.model.definition.Plates;
import org.baywright.model.definition.Side;
import org.baywright.model.setout.ColumnLine;
import org.baywright.model.setout.RoofSlope;

/**
 * How the crossed braces of one bay divide a slope: nodes up the slope on either rafter, a strut at each, and two
 * braces between every two.
 *
 * <pre>
 *   rafter o-----strut----o rafter
 *          | \          / |          ^ up the slope
 *          |    \    /    |          |
 *          |    /    \    |          +--> along the building
 *          | /          \ |
 *          o-----strut----o
 * </pre>
 *
 * @param bays the slope along the building
 * @param bay the braced bay
 */
record BracePanels(RowBays bays, int bay) {
    /** From a node to the end of a brace. @source end cleats 100 to 150 each: common practice */
    private static final double END_CLEAT = 125;

    /** What a rod runs on past its end cleat, for thread, washers and nut. Common practice, no source. */
    private static final double THREAD = 50;

    /** Between a brace's end and the steel beside it. Common practice, no source. */
    private static final double CLEAR = 10;

    /** From the end of a rafter to the first node, so that cleats stay clear of the plates there. Same source. */
    private static final double NODE_ROOM = 200;

    /** A slope with less room between its end nodes is not braced. Common practice, no source. */
    private static final double LEAST_PANEL = 1000;

    /** The top of a brace below the top of rafter steel, under purlins. Common practice, no source. */
    private static final double UNDER_PURLINS = 10;

    static final double PLATE = 8;
    private static final double LEAST_PLATE_DEPTH = 40;

    /** The true length of a brace from node to node, in its own plane. @source √(S² + (run/cos θ)²): plane geometry */
    static double trueLength(double along, double levelRun, double cosine) {
        return Math.hypot(along, levelRun / cosine);
    }

    Section section() {
        return bays.definition().envelope().bracing().section();
    }

    private boolean isRod() {
        return section() instanceof BarSection bar && bar.form() == BarSection.Form.ROUND;
    }

    /** Across the brace, in the plane of the roof. */
    private double across() {
        return section().depth();
    }

    /** How far the upper face of the brace cleats lies below the top of rafter steel. */
    double plateDepth() {
        return Math.max(LEAST_PLATE_DEPTH, section().width() + UNDER_PURLINS);
    }

    Member rafter(int frame) {
        return line().rafter(bays.definition(), frame);
    }

    private ColumnLine line() {
        return bays.rows().slope().line();
    }

    /** From the middle of a rafter to the face that cleats and struts are welded to: the web of a beam. */
    double face(int frame) {
        Member rafter = rafter(frame);
        boolean web = rafter.section() instanceof BeamSection && !rafter.turned();
        return (web ? ((BeamSection) rafter.section()).webThickness() : rafter.width()) / 2;
    }

    /** Along the building, from rafter to rafter. */
    double along() {
        return bays.middle(bay + 1) - bays.middle(bay);
    }

    /** Up the slope from the eave's outside face; none where there is no room. */
    List<Double> nodes() {
        double low = low();
        double high = high();
        if (high - low < LEAST_PANEL) {
            return List.of();
        }
        int panels = (int) Math.max(1, Math.round((high - low) / along()));
        List<Double> nodes = IntStream.rangeClosed(0, panels)
                .mapToObj(i -> low + (high - low) * i / panels)
                .toList();
        return hypotenuse(nodes) - 2 * stop(nodes) < LEAST_PANEL ? List.of() : nodes;
    }

    private double low() {
        return (butted() ? inside(line()) : 0) + room();
    }

    private double high() {
        RoofSlope slope = bays.rows().slope();
        Plates plates = bays.definition().plates();
        double end = slope.run() / slope.roof().cosine();
        double off = switch (slope.top()) {
            case RIDGE -> plates.apexThickness() / slope.roof().cosine();
            case HIGH_EAVE -> butted() ? inside(bays.setOut().main(Side.RIGHT)) : 0;
            case WALL, MAIN_ROOF -> plates.leanToGap() / slope.roof().cosine();
        };
        return end - off - room();
    }

    /** A plumb end plate leans into the rafter below its top. */
    private double room() {
        return NODE_ROOM
                + 2 * plateDepth() * Math.abs(bays.rows().slope().roof().rise());
    }

    private boolean butted() {
        return bays.definition().shape().kneeJoint() == KneeJoint.BUTTED && !line().leanTo();
    }

    /** From a column's outside face to the end of the rafter that butts against its inside. */
    private double inside(ColumnLine line) {
        double deepest = Stream.of(bay, bay + 1)
                .mapToDouble(f -> line.column(bays.definition(), f).depth())
                .max()
                .orElseThrow();
        return (deepest + bays.definition().plates().kneeThickness())
                / line.roof().cosine();
    }

    private double panel(List<Double> nodes) {
        return nodes.get(1) - nodes.get(0);
    }

    private double hypotenuse(List<Double> nodes) {
        return trueLength(along(), panel(nodes), 1);
    }

    /** Cosine of the angle between a brace and the building's length. */
    double cosine(List<Double> nodes) {
        return along() / hypotenuse(nodes);
    }

    /** Sine of the angle between a brace and the building's length. */
    double sine(List<Double> nodes) {
        return panel(nodes) / hypotenuse(nodes);
    }

    /** From a node to the end of a brace, along it: past its end cleat, clear of rafter and strut. */
    double stop(List<Double> nodes) {
        double widest = Math.max(rafter(bay).width(), rafter(bay + 1).width());
        double pastRafter = (widest / 2 + across() / 2 * sine(nodes) + CLEAR) / cosine(nodes);
        double pastStrut = (RoofBraceMaker.STRUT.width() / 2 + across() / 2 * cosine(nodes) + CLEAR) / sine(nodes);
        double usual = isRod() ? END_CLEAT - THREAD : END_CLEAT;
        return Math.max(usual, Math.max(pastRafter, pastStrut));
    }
}
