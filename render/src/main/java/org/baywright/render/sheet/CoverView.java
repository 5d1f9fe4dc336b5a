package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.baywright.model.cladding.Building;
import org.baywright.model.definition.LeanTo;
import org.baywright.model.definition.Side;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.ColumnLine;
import org.baywright.model.setout.SetOut;
import org.baywright.render.mark.Arc;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Stroke;
import org.baywright.render.mark.Text;
import org.baywright.render.paper.Pen;
import org.baywright.render.paper.Scale;
import org.baywright.render.view.HiddenLines;
import org.baywright.render.view.Item;
import org.baywright.render.view.Pictorial;
import org.baywright.render.view.Projection;
import org.baywright.render.view.Silhouette;
import org.baywright.render.view.ViewLine;
import org.baywright.render.view.ViewPort;
import org.locationtech.jts.geom.Envelope;

/**
 * The frame from above a corner, as large as its room allows. A long building is broken off, so that what is shown can
 * be made out.
 */
final class CoverView {
    /** A building of more bays than this is broken off. */
    private static final int MOST_BAYS = 14;

    private static final int BAYS_SHOWN = 12;

    /** How far string lines run on to the break, as a share of the next bay. */
    private static final double RUN_ON = 0.6;

    /** Paper kept round the steel for grid bubbles, which stand below and aside. */
    private static final Margins ROUND = new Margins(14, 14, 14, 1);

    /** Ribs stand closer in a pictorial view than face on. */
    private static final double FORESHORTENED = 1.8;

    /** A scale at which there are few ribs, to measure by. */
    private static final double FAR = 10_000;

    private static final double BUBBLE = 2.8;
    private static final double BUBBLE_OFF = 9;
    private static final double TEXT = 2.5;

    private final SetOut setOut;
    private final Side side;
    private final int frames;
    private final double end;
    private final Building building;
    private final List<Item> items;
    private final List<Vec2> taken = new ArrayList<>();

    CoverView(Building building) {
        Shed shed = building.shed();
        this.building = building;
        this.setOut = shed.setOut();
        this.side = seen(shed);
        int bays = setOut.frames() - 1;
        this.frames = (bays > MOST_BAYS ? BAYS_SHOWN : bays) + 1;
        this.end = broken() ? runOn() : setOut.frameLine(frames);
        this.items = new ArrayList<>(
                isClosed()
                        ? List.of()
                        : Steelwork.items(shed, (part, place) -> place.frame() <= frames && shownBare(part)));
        this.items.addAll(GroundLines.of(setOut, frames, end));
    }

    /** Whether the building is shown with its envelope; a long one that is broken off shows its frame. */
    private boolean isClosed() {
        return building.shed().definition().envelope().isFull() && !broken();
    }

    /** The frame of a building that has an envelope is shown without it. */
    private boolean shownBare(Part part) {
        return !building.shed().definition().envelope().isFull() || part.kind().isOfFrame();
    }

    private Scene scene(double scale) {
        Scene closed = Envelopes.scene(building, scale * FORESHORTENED, (part, place) -> !isRow(part));
        List<Item> all = new ArrayList<>(closed.items());
        all.addAll(items);
        return new Scene(all, closed.blinds(), closed.lines());
    }

    private static boolean isRow(Part part) {
        return part.kind() == PartKind.PURLIN;
    }

    private double runOn() {
        double last = setOut.frameLine(frames);
        return last + RUN_ON * (setOut.frameLine(frames + 1) - last);
    }

    /** The side of the largest lean-to; without one the left, which is a skillion's low side and shows its roof. */
    private static Side seen(Shed shed) {
        return shed.definition().leanTos().stream()
                .max(Comparator.comparingDouble(l -> l.width() * (1 + l.toBay() - l.fromBay())))
                .map(LeanTo::side)
                .orElse(Side.LEFT);
    }

    private boolean broken() {
        return frames < setOut.frames();
    }

    /** What the view shows. */
    String title() {
        String corner = (isClosed() ? "SHED" : "FRAME") + " FROM THE FRONT " + side;
        return broken() ? corner + ": FIRST " + (frames - 1) + " OF " + (setOut.frames() - 1) + " BAYS SHOWN" : corner;
    }

    /** The marks of the view in the middle of its room, isometric or dimetric, whichever comes out larger. */
    List<Mark> marks(Envelope room) {
        Envelope inner = ROUND.within(room);
        Projection isometric = Pictorial.isometric(side);
        Projection dimetric = Pictorial.dimetric(side);
        boolean first = scale(isometric, inner).n() <= scale(dimetric, inner).n();
        return marks(first ? isometric : dimetric, inner);
    }

    private Scale scale(Projection projection, Envelope room) {
        Envelope bounds = bounds(projection);
        double n = Math.max(bounds.getWidth() / room.getWidth(), bounds.getHeight() / room.getHeight());
        return new Scale((int) Math.ceil(n));
    }

    private List<Mark> marks(Projection projection, Envelope room) {
        ViewPort port = ViewPort.centred(bounds(projection), room, scale(projection, room));
        List<ViewLine> seen =
                isClosed() ? scene(port.scale().n()).seen(projection) : HiddenLines.visible(items, projection);
        List<Mark> marks = new ArrayList<>();
        marks.addAll(ViewPort.strokes(lines(seen, true), port, Pen.DIMENSION, Layer.GROUND));
        List<ViewLine> rest = lines(seen, false);
        marks.addAll(ViewPort.strokes(ribs(rest, true), port, Pen.HATCH, Layer.CLADDING));
        marks.addAll(ViewPort.strokes(ribs(rest, false), port, steelPen(port), Layer.STEEL));
        breakLine(projection, port).ifPresent(marks::add);
        bubbles(projection, port, marks);
        return marks;
    }

    private Envelope bounds(Projection projection) {
        Envelope bounds = Silhouette.bounds(items, projection);
        if (isClosed()) {
            bounds.expandToInclude(scene(FAR).bounds(projection));
        }
        return bounds;
    }

    private static List<ViewLine> ribs(List<ViewLine> all, boolean ribs) {
        return all.stream().filter(l -> l.part().equals(Scene.RIB) == ribs).toList();
    }

    private static List<ViewLine> lines(List<ViewLine> all, boolean ground) {
        return all.stream()
                .filter(l -> l.part().equals(GroundLines.NO_PART) == ground)
                .toList();
    }

    /** Where members come out thin on paper, wide lines would run together. */
    private static Pen steelPen(ViewPort port) {
        return port.scale().n() <= 60 ? Pen.VISIBLE : Pen.DIMENSION;
    }

    /** Across the lines that run on, with a kink in the middle. */
    private Optional<Mark> breakLine(Projection projection, ViewPort port) {
        if (!broken()) {
            return Optional.empty();
        }
        List<Double> xs = setOut.columnLines().stream()
                .filter(l -> l.has(frames) && l.lastFrame() > frames)
                .map(ColumnLine::x)
                .sorted()
                .toList();
        Vec2 a = port.toPaper(projection.flat(new Vec3(xs.get(0), end, 0)));
        Vec2 b = port.toPaper(projection.flat(new Vec3(xs.get(xs.size() - 1), end, 0)));
        Vec2 along = b.minus(a).unit();
        Vec2 middle = a.plus(b).times(0.5);
        Vec2 kink = along.left().times(3);
        return Optional.of(new Stroke(
                List.of(
                        a.minus(along.times(4)),
                        middle.minus(along.times(1.5)),
                        middle.minus(along.times(0.5)).plus(kink),
                        middle.plus(along.times(0.5)).minus(kink),
                        middle.plus(along.times(1.5)),
                        b.plus(along.times(4))),
                false,
                Pen.DIMENSION,
                Layer.GROUND,
                ""));
    }

    /** Letters before the first frame and numbers along the side that is seen. */
    private void bubbles(Projection projection, ViewPort port, List<Mark> marks) {
        Vec2 before = projection.flat(Vec3.ALONG.negated()).unit();
        setOut.columnLines().stream()
                .filter(l -> l.firstFrame() <= frames)
                .forEach(l -> bubble(
                        l.letter(),
                        port.toPaper(projection.flat(new Vec3(l.x(), setOut.frameLine(l.firstFrame()), 0))),
                        before,
                        marks));
        Vec2 aside = projection
                .flat(side == Side.LEFT ? Vec3.ACROSS.negated() : Vec3.ACROSS)
                .unit();
        Vec2 last = new Vec2(Double.NEGATIVE_INFINITY, 0);
        for (int frame = 1; frame <= frames; frame++) {
            Vec2 at = port.toPaper(projection.flat(new Vec3(outermost(frame), setOut.frameLine(frame), 0)));
            if (last.distance(at) > 3 * BUBBLE) {
                bubble(String.valueOf(frame), at, aside, marks);
                last = at;
            }
        }
    }

    private double outermost(int frame) {
        Comparator<ColumnLine> outward = Comparator.comparingDouble(l -> -l.inward() * l.x());
        return setOut.columnLines().stream()
                .filter(l -> l.side() == side && l.has(frame))
                .max(outward)
                .orElseThrow()
                .x();
    }

    /** A bubble on its leader, as near as the ones before it leave room for; left out when they leave none. */
    private void bubble(String sign, Vec2 at, Vec2 out, List<Mark> marks) {
        for (int step = 1; step <= 2; step++) {
            Vec2 centre = at.plus(out.times(step * BUBBLE_OFF));
            if (taken.stream().allMatch(other -> other.distance(centre) > 2.4 * BUBBLE)) {
                taken.add(centre);
                Vec2 rim = centre.minus(out.times(BUBBLE));
                marks.add(Stroke.line(at.plus(out.times(1.5)), rim, Pen.DIMENSION, Layer.GRID));
                marks.add(Arc.circle(centre, BUBBLE, Pen.DIMENSION, Layer.GRID, ""));
                Vec2 foot = centre.minus(new Vec2(0, TEXT / 2));
                marks.add(Text.level(sign, foot, TEXT, Text.Align.CENTRE, Layer.GRID));
                return;
            }
        }
    }
}
