package org.baywright.render.dimension;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.baywright.model.geometry.Vec2;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Text;
import org.baywright.render.paper.Lettering;
import org.locationtech.jts.geom.Envelope;

/**
 * The search for room for one label: rings about its target, nearest first, sixteen directions each. The cost of a
 * place is its distance plus what it spoils, so the search ends once the ring alone costs more than the best place.
 */
final class LabelSearch {
    /** Room between words that stand beside a point and that point. */
    private static final double BESIDE = 1.6;

    /** Shortest leader. */
    private static final double FIRST_LEADER = 6;

    private static final double RING = 4;
    private static final double GRID = 2;
    private static final double LANDING = 2;

    /** Room before and after words, so that two labels in one line do not read as one. */
    private static final double APART = 4;

    /** What one step down the list of wishes costs, in mm of distance. */
    private static final double WISH = 3;

    private final LabelField field;
    private final Label label;
    private final double width;
    private final double depth;
    private Vec2 bestCentre;
    private boolean bestBeside;
    private double bestCost = Double.POSITIVE_INFINITY;

    LabelSearch(LabelField field, Label label) {
        this.field = field;
        this.label = label;
        this.width = label.width();
        this.depth = label.depth();
    }

    PlacedLabel best() {
        if (label.pointer() == Label.Pointer.BESIDE) {
            ring(BESIDE, true, 45);
        }
        Envelope frame = field.frame();
        double furthest = Math.hypot(frame.getWidth(), frame.getHeight());
        for (double r = FIRST_LEADER; r < Math.min(furthest, bestCost); r += RING) {
            ring(r, false, 22.5);
        }
        if (bestCentre == null) {
            bestCentre = anywhere(true)
                    .or(() -> anywhere(false))
                    .orElseThrow(() ->
                            new IllegalStateException("no room left on the sheet for the label " + label.lines()));
        }
        return placed(bestCentre, bestBeside);
    }

    private void ring(double r, boolean beside, double stepDeg) {
        for (double deg = 0; deg < 360; deg += stepDeg) {
            Vec2 centre = centre(r, deg);
            TurnedBox box = box(centre);
            double unspoilt = (beside ? 0 : r + 10 + steep(centre)) + wish(deg);
            if (unspoilt < bestCost - 1e-9 && field.free(box.longer(APART))) {
                judge(centre, box, beside, unspoilt);
            }
        }
    }

    /** Keeps a place when it costs less than the best; its leader is looked at only where its words alone do not. */
    private void judge(Vec2 centre, TurnedBox box, boolean beside, double unspoilt) {
        double words = unspoilt + field.harm(box);
        if (words < bestCost - 1e-9) {
            TurnedBox leader = beside ? TurnedBox.line(label.target(), label.target()) : leaderLine(centre);
            double cost = words + field.leaderHarm(leader);
            if (cost < bestCost - 1e-9) {
                bestCost = cost;
                bestCentre = centre;
                bestBeside = beside;
            }
        }
    }

    /** The centre of a block whose near side or corner is a distance off in a direction. */
    private Vec2 centre(double r, double deg) {
        double cos = Math.cos(Math.toRadians(deg));
        double sin = Math.sin(Math.toRadians(deg));
        double sideways = Math.abs(cos) < 0.3 ? 0 : Math.signum(cos);
        double upward = Math.abs(sin) < 0.3 ? 0 : Math.signum(sin);
        return label.target().plus(new Vec2(r * cos + sideways * width / 2, r * sin + upward * depth / 2));
    }

    private double wish(double deg) {
        int rank = label.preferred().indexOf(Spot.nearest(deg));
        return WISH * (rank < 0 ? label.preferred().size() + (label.preferred().isEmpty() ? deg / 360 : 0) : rank);
    }

    private TurnedBox box(Vec2 centre) {
        return TurnedBox.upright(
                centre.x() - width / 2, centre.y() - depth / 2, centre.x() + width / 2, centre.y() + depth / 2);
    }

    /** Looks at the whole sheet when no ring had room; at last only words and frame are kept off. */
    private Optional<Vec2> anywhere(boolean heedObstacles) {
        Envelope frame = field.frame();
        Vec2 found = null;
        double nearest = Double.POSITIVE_INFINITY;
        for (double y = frame.getMinY() + depth / 2; y <= frame.getMaxY() - depth / 2; y += GRID) {
            for (double x = frame.getMinX() + width / 2; x <= frame.getMaxX() - width / 2; x += GRID) {
                Vec2 centre = new Vec2(x, y);
                double distance = centre.distance(label.target());
                if (distance < nearest && usable(box(centre), heedObstacles)) {
                    nearest = distance;
                    found = centre;
                }
            }
        }
        return Optional.ofNullable(found);
    }

    private boolean usable(TurnedBox box, boolean heedObstacles) {
        return heedObstacles ? field.free(box) : field.inFrame(box) && !field.onWords(box);
    }

    private PlacedLabel placed(Vec2 centre, boolean beside) {
        return new PlacedLabel(texts(centre), beside ? List.of() : leader(centre), box(centre));
    }

    /** Lines of text are set flush on the side that faces the target, so that the leader meets them all alike. */
    private List<Text> texts(Vec2 centre) {
        boolean flushLeft = centre.x() >= label.target().x();
        double x = flushLeft ? centre.x() - width / 2 : centre.x() + width / 2;
        double y = centre.y() + depth / 2 - Lettering.ascent(label.height(), label.face());
        List<Text> texts = new ArrayList<>();
        for (String line : label.lines()) {
            texts.add(new Text(
                    line,
                    new Vec2(x, y),
                    label.height(),
                    flushLeft ? Text.Align.LEFT : Text.Align.RIGHT,
                    0,
                    label.face(),
                    Layer.LABEL,
                    label.part()));
            y -= Drafting.LINE_PITCH * label.height();
        }
        return texts;
    }

    /** A leader without a landing is less good to read. */
    private double steep(Vec2 centre) {
        return path(centre).size() == 3 ? 0 : 3;
    }

    private TurnedBox leaderLine(Vec2 centre) {
        return TurnedBox.line(label.target(), path(centre).get(1));
    }

    /** From the target to a short level landing at the first line; straight to a block right above or below. */
    private List<Vec2> path(Vec2 centre) {
        Vec2 target = label.target();
        double sideways = centre.x() - target.x();
        if (Math.abs(sideways) < width / 2) {
            double side = centre.y() > target.y() ? -1 : 1;
            return List.of(target, new Vec2(target.x(), centre.y() + side * depth / 2));
        }
        double edge = centre.x() - Math.signum(sideways) * (width / 2 + 0.8);
        double y = centre.y() + depth / 2 - Lettering.ascent(label.height(), label.face()) + label.height() / 2;
        double knee = edge - Math.signum(sideways) * LANDING;
        boolean roomForLanding = (knee - target.x()) * sideways > 0;
        return roomForLanding
                ? List.of(target, new Vec2(knee, y), new Vec2(edge, y))
                : List.of(target, new Vec2(edge, y));
    }

    private List<Mark> leader(Vec2 centre) {
        List<Vec2> path = path(centre);
        Vec2 back = label.target().minus(path.get(1));
        boolean arrow = label.pointer() == Label.Pointer.ARROW && back.length() > 0;
        Mark end =
                arrow ? Ink.arrow(label.target(), back.unit(), Layer.LABEL) : Ink.dot(label.target(), 0.5, Layer.LABEL);
        return List.of(Ink.thin(path, Layer.LABEL), end);
    }
}
