package org.baywright.model.parts;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.baywright.model.catalogue.Catalogue;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.LiftingBeam;
import org.baywright.model.definition.Member;
import org.baywright.model.definition.RoofShape;
import org.baywright.model.definition.Side;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Plane;
import org.baywright.model.geometry.Solid;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.setout.ColumnLine;
import org.baywright.model.setout.SetOut;

/**
 * Makes a lifting beam and what carries it. Across, it lies on a bracket at each column; along, it hangs from a bracket
 * under the rafter of each of its frames, or from two beside the plates of the ridge. All is welded, brackets and plates
 * in the shop and the beam on site: a bracket leaves no room for bolts through the flange of every beam, and a hollow
 * beam has none. What any of it may carry, and every weld, is the engineer's to say.
 *
 * <pre>
 *  across   |____________________|        along   ----- rafter -----
 *           |====================|                      |  | bracket
 *  column   |--|              |--| bracket              ==== plate
 *                                                       ____
 *                                                        ||  beam
 * </pre>
 */
public final class LiftingMaker {
    /** Thickness of the plate between beam and bracket. Common practice, no source. */
    private static final double PLATE = 12;

    /** From the column's face to the end of the bracket under it. Common practice, no source. */
    private static final double SEAT = 160;

    /** From the column's face to the beam's end. Common practice, no source. */
    private static final double GAP = 10;

    /** The shortest bracket that can be welded all round at both ends. Common practice, no source. */
    private static final double SHORTEST = 50;

    /** Room that a beam along the building needs between its top and the rafters: plate and shortest bracket. */
    public static final double OVER_BEAM = PLATE + SHORTEST;

    /** What the saw takes off both ends of a bar. Common practice, no source. */
    private static final double TRIM = 20;

    private final Definition definition;
    private final SetOut setOut;
    private final LiftingBeam beam;
    private final Member bracket;
    private final List<Piece> pieces = new ArrayList<>();

    private LiftingMaker(Definition definition, SetOut setOut, LiftingBeam beam) {
        this.definition = definition;
        this.setOut = setOut;
        this.beam = beam;
        this.bracket = beam.bracket();
    }

    /** Nothing where no beam is wanted. */
    static List<Piece> pieces(Definition definition, SetOut setOut) {
        return definition
                .envelope()
                .liftingBeam()
                .map(beam -> new LiftingMaker(definition, setOut, beam).made())
                .orElse(List.of());
    }

    private List<Piece> made() {
        if (beam.along()) {
            along();
        } else {
            across();
        }
        return pieces;
    }

    private void across() {
        double left = seat(setOut.main(Side.LEFT)) + GAP;
        double right = seat(setOut.main(Side.RIGHT)) - GAP;
        Vec3 from = new Vec3(left, columnMiddle(setOut.main(Side.LEFT)), axis());
        bar(from, new Vec3(1, 0, 0), right - left, beam.fromFrame());
    }

    /** Puts a bracket and its plate on a column; the column's inside face. */
    private double seat(ColumnLine line) {
        double face = line.x() + line.inward() * column(line).depth();
        double middle = columnMiddle(line);
        Vec3 inward = new Vec3(line.inward(), 0, 0);
        Vec3 root = new Vec3(face, middle, beam.underside() - PLATE - bracket.depth() / 2);
        bracket(Placement.of(root, inward, Vec3.UP), Solid.square(bracket.profile(), 0, SEAT), line.side());
        Vec3 under = new Vec3(face + line.inward() * SEAT / 2, middle, beam.underside() - PLATE);
        double width = PlateRoom.upTo5(Math.max(beam.member().width(), bracket.width()) + 2 * PlateRoom.WELD);
        plate(under, SEAT - 2 * GAP, width, beam.fromFrame(), line.side());
        return face;
    }

    private Member column(ColumnLine line) {
        return line.column(definition, beam.fromFrame());
    }

    private double columnMiddle(ColumnLine line) {
        return setOut.middle(beam.fromFrame(), column(line).width());
    }

    private void along() {
        List<Double> frames = IntStream.rangeClosed(beam.fromFrame(), beam.toFrame())
                .mapToObj(this::hung)
                .toList();
        double longest = Collections.max(Catalogue.shipped()
                        .stockLengths(beam.member().section())
                        .lengthsMm())
                - TRIM;
        double from = frames.get(0) - bracket.width() / 2;
        int first = 0;
        for (int next = 1; next < frames.size(); next++) {
            boolean last = next == frames.size() - 1;
            boolean tooLong = !last && end(frames, next + 1) - from > longest;
            if (last || tooLong) {
                double to = end(frames, next);
                bar(new Vec3(beam.offset(), from, axis()), new Vec3(0, 1, 0), to - from, beam.fromFrame() + first);
                from = to;
                first = next;
            }
        }
    }

    /** A length of beam ends in the middle of a bracket, the last one at its far side. */
    private double end(List<Double> frames, int at) {
        return frames.get(at) + (at == frames.size() - 1 ? bracket.width() / 2 : 0);
    }

    /** Hangs brackets and their plate from one frame; where its rafters lie along the building. */
    private double hung(int frame) {
        double middle = setOut.rafterMiddle(definition, setOut.main(Side.LEFT), frame);
        double[] at = places();
        for (double x : at) {
            Side half = x < setOut.span() / 2 ? Side.LEFT : Side.RIGHT;
            ColumnLine line = setOut.main(half);
            Vec3 foot = new Vec3(x, middle, beam.underside() + beam.member().depth() + PLATE);
            Placement up = Placement.of(foot, Vec3.UP, new Vec3(line.inward(), 0, 0));
            double rafter = line.rafter(definition, frame).depth();
            Plane top = up.toLocal(line.roof().plane().shifted(-rafter));
            bracket(up, new Solid(bracket.profile(), new Plane(new Vec3(-1, 0, 0), 0), top), half, frame);
        }
        double length = PlateRoom.upTo5(at[at.length - 1] - at[0] + bracket.depth() + 2 * PlateRoom.WELD);
        Vec3 on = new Vec3(
                (at[0] + at[at.length - 1]) / 2,
                middle,
                beam.underside() + beam.member().depth());
        double width = PlateRoom.upTo5(bracket.width() + 2 * PlateRoom.WELD);
        plate(on, length, width, frame, on.x() < setOut.span() / 2 ? Side.LEFT : Side.RIGHT);
        return middle;
    }

    /** Under the beam's own line, or on both sides of the plates of the ridge when that is too near. */
    private double[] places() {
        double ridge = setOut.span() / 2;
        double beside = definition.plates().apexThickness() + PlateRoom.WELD + bracket.depth() / 2;
        boolean gable = definition.shape().roofShape() == RoofShape.GABLE;
        return gable && Math.abs(beam.offset() - ridge) < beside
                ? new double[] {ridge - beside, ridge + beside}
                : new double[] {beam.offset()};
    }

    private double axis() {
        return beam.underside() + beam.member().depth() / 2;
    }

    private void bar(Vec3 from, Vec3 along, double length, int frame) {
        Member member = beam.member();
        Solid solid = Solid.square(member.profile(), 0, length);
        Place place = new Place(Placement.of(from, along, Vec3.UP), frame, Side.LEFT);
        pieces.add(new Piece(
                PartKind.LIFTING_BEAM, new Material.Bar(member.section(), member.turned()), solid, List.of(), place));
    }

    private void bracket(Placement at, Solid solid, Side side) {
        bracket(at, solid, side, beam.fromFrame());
    }

    private void bracket(Placement at, Solid solid, Side side, int frame) {
        Material.Bar material = new Material.Bar(bracket.section(), bracket.turned());
        pieces.add(new Piece(PartKind.LIFTING_BRACKET, material, solid, List.of(), new Place(at, frame, side)));
    }

    /** A level plate, its underside at a point. */
    private void plate(Vec3 under, double across, double along, int frame, Side side) {
        Placement at = Placement.of(under, Vec3.UP, new Vec3(1, 0, 0));
        pieces.add(
                PlateMaker.plate(PartKind.LIFTING_PLATE, across, along, PLATE, List.of(), new Place(at, frame, side)));
    }
}
