package org.baywright.render.sheet;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.parts.Assemblies;
import org.baywright.model.parts.Assembly;
import org.baywright.model.parts.Attached;
import org.baywright.model.parts.Part;
import org.baywright.render.view.ViewLine;
import org.baywright.render.view.Window;
import org.locationtech.jts.geom.Envelope;

/**
 * The symbol of the fillet between each plate of a joint and its member, as in the weld list; where there is no paper for
 * one the notes tell it.
 *
 * @param view the detail
 * @param lines all that is seen of the frame
 * @param window what the detail shows, in view mm
 */
record JointWelds(PlacedView view, List<ViewLine> lines, Envelope window) {
    /** A member's line that ends so near a plate ends on it, mm. */
    private static final double MEETS = 2;

    /** The reference line is tried so far above or below the weld, mm of paper, nearest first. */
    private static final double FIRST = 6;

    private static final double STEP = 2;
    private static final int TRIES = 24;

    /** Paper kept round a symbol and its arrow. */
    private static final double ROUND = 0.6;

    /** What a line through a symbol or its arrow costs, in mm of distance. */
    private static final double THROUGH_SYMBOL = 20;

    private static final double THROUGH_ARROW = 10;

    /** Draws what a plate is welded by, once however many members it is welded to. */
    void draw(Assemblies assemblies, Part plate) {
        for (Assembly assembly : assemblies.holding(plate)) {
            Optional<Vec2> weld = weld(assembly.member(), plate);
            if (weld.isPresent()) {
                Attached attached = assembly.welded().stream()
                        .filter(a -> a.plate() == plate)
                        .findFirst()
                        .orElseThrow();
                draw(attached, view.port().toPaper(weld.get()));
                return;
            }
        }
    }

    private List<ViewLine> seen(Part part) {
        return Window.cut(
                lines.stream().filter(l -> l.part().equals(part.mark())).toList(), window);
    }

    /** Where an edge of the member ends on the plate. */
    private Optional<Vec2> weld(Part member, Part plate) {
        Envelope on = new Envelope();
        ends(plate).forEach(p -> on.expandToInclude(p.x(), p.y()));
        return on.isNull()
                ? Optional.empty()
                : ends(member)
                        .filter(p -> on.distance(new Envelope(p.x(), p.x(), p.y(), p.y())) < MEETS)
                        .min(Comparator.comparingDouble(Vec2::x).thenComparingDouble(Vec2::y));
    }

    private Stream<Vec2> ends(Part part) {
        return seen(part).stream().flatMap(l -> Stream.of(l.from(), l.to()));
    }

    private void draw(Attached plate, Vec2 target) {
        IntStream.range(0, TRIES)
                .mapToObj(i -> FIRST + i * STEP)
                .flatMap(off -> Stream.of(target.y() + off, target.y() - off))
                .flatMap(y -> Stream.of(false, true).map(right -> new Try(symbol(plate, target, right), y)))
                .filter(this::isFree)
                .min(Comparator.comparingDouble(this::harm))
                .ifPresent(at -> view.draw(at.symbol.draw(at.y)));
    }

    /** Its distance, and much more for lines of steel, concrete, anchors or figures that run through it or its arrow. */
    private double harm(Try at) {
        Vec2 target = at.symbol.target();
        Vec2 bend = at.symbol.bend(at.y);
        // Where the arrow ends there are lines always.
        Vec2 from = target.plus(bend.minus(target).times(0.25));
        Envelope arrow = new Envelope(from.x(), bend.x(), from.y(), bend.y());
        return Math.abs(at.y - target.y())
                + THROUGH_SYMBOL * view.linesThrough(at.symbol.room(at.y))
                + THROUGH_ARROW * view.linesThrough(arrow);
    }

    /** A symbol with its reference line at a height of the paper. */
    private record Try(WeldSymbol symbol, double y) {}

    private WeldSymbol symbol(Attached plate, Vec2 target, boolean toRight) {
        return new WeldSymbol(
                target,
                toRight,
                plate.weldLeg(),
                plate.isWeldedRound(),
                plate.plate().mark());
    }

    private boolean isFree(Try at) {
        Envelope taken = at.symbol.room(at.y);
        Envelope arrow = new Envelope(
                at.symbol.target().x(),
                at.symbol.bend(at.y).x(),
                at.symbol.target().y(),
                at.y);
        arrow.expandBy(ROUND);
        return view.box().covers(taken) && view.isFree(taken) && view.isFree(arrow);
    }
}
