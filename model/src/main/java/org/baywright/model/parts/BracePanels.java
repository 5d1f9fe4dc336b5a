package org.baywright.model.parts;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
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

    /** Between a brace's end and the steel beside it. Common practice, no source. */
    private static final double CLEAR = 10;

    /** From the end of a rafter to the first node, so that cleats stay clear of the plates there. Same source. */
    private static final double NODE_ROOM = 250;

    /** A slope with less room between its end nodes is not braced. Common practice, no source. */
    private static final double LEAST_PANEL = 1000;

    /** The top of a brace below the top of rafter steel, under purlins. Common practice, no source. */
    private static final double UNDER_PURLINS = 10;

    static final double PLATE = 8;
    private static final double LEAST_PLATE_DEPTH = 30;

    /** From a cap to the middle of the strut beside it. Common practice, no source. */
    private static final double BESIDE_CAP = 50;

    /** The true length of a brace from node to node, in its own plane. @source √(S² + (run/cos θ)²): plane geometry */
    static double trueLength(double along, double levelRun, double cosine) {
        return Math.hypot(along, levelRun / cosine);
    }

    Section section() {
        return bays.definition().envelope().bracing().section();
    }

    /** From the brace's line to its further edge, in the plane of the roof. */
    private double halfAcross() {
        return BraceLine.halfAcross(section());
    }

    /**
     * How far the upper face of the brace cleats lies below the top of rafter steel: under the upper brace, on the
     * shallower rafter. An angle's upstanding leg does not fit under the purlins of a rafter shallower than itself.
     */
    double plateDepth() {
        double shallower = Math.min(rafter(bay).depth(), rafter(bay + 1).depth());
        return Math.min(shallower - PLATE, Math.max(LEAST_PLATE_DEPTH, BraceLine.out(section()) + UNDER_PURLINS));
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

    /** Whether a flange overhangs that face, so that a bolt beside it is put in past the flange. */
    double pastFlange(int frame) {
        return rafter(frame).width() / 2 - face(frame);
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
        return pastColumn(line());
    }

    private double high() {
        RoofSlope slope = bays.rows().slope();
        Plates plates = bays.definition().plates();
        double cosine = slope.roof().cosine();
        double end = slope.run() / cosine;
        return switch (slope.top()) {
            case RIDGE -> end - plates.apexThickness() / cosine - room();
            case HIGH_EAVE -> end - pastColumn(bays.setOut().main(Side.RIGHT));
            case WALL, MAIN_ROOF -> end - plates.leanToGap() / cosine - room();
        };
    }

    /** A plumb end plate leans into the rafter below its top. */
    private double room() {
        return NODE_ROOM
                + 2 * plateDepth() * Math.abs(bays.rows().slope().roof().rise());
    }

    /** From a column's outside face to the first node: past the column with its cap, or past the plate of its knee. */
    private double pastColumn(ColumnLine line) {
        boolean butted = bays.definition().shape().kneeJoint() == KneeJoint.BUTTED && !line.leanTo();
        double deepest = Stream.of(bay, bay + 1)
                .mapToDouble(f -> line.column(bays.definition(), f).depth())
                .max()
                .orElseThrow();
        double past = butted ? bays.definition().plates().kneeThickness() : PlateRoom.WELD;
        double beside = (deepest + past) / line.roof().cosine();
        return butted ? beside + room() : Math.max(beside + BESIDE_CAP, room());
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
        double pastRafter = (widest / 2 + halfAcross() * sine(nodes) + CLEAR) / cosine(nodes);
        double pastStrut = (RoofBraceMaker.STRUT.width() / 2 + halfAcross() * cosine(nodes) + CLEAR) / sine(nodes);
        return Math.max(END_CLEAT, Math.max(pastRafter, pastStrut));
    }

    /**
     * Whether nothing of the bracing lies near a place up the slope, within a stretch along the building from the middle
     * of either rafter.
     */
    boolean isFree(double at, double from, double to, double beside) {
        List<Double> nodes = nodes();
        if (nodes.isEmpty()) {
            return true;
        }
        double cleat = (stop(nodes) + 2 * CLEAR) * sine(nodes) + 2 * beside;
        double spread = (beside + halfAcross()) / sine(nodes);
        return nodes.stream().noneMatch(node -> Math.abs(at - node) < cleat)
                && IntStream.range(1, nodes.size())
                        .mapToDouble(i -> (at - nodes.get(i - 1)) / panel(nodes))
                        .filter(share -> share > 0 && share < 1)
                        .flatMap(share -> DoubleStream.of(share * along(), (1 - share) * along()))
                        .noneMatch(y -> y > from - spread && y < to + spread);
    }
}
