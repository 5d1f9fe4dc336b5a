package org.baywright.render.sheet;

import java.util.stream.DoubleStream;
import org.baywright.model.geometry.Profile;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.Assembly;
import org.baywright.model.parts.Attached;
import org.baywright.model.parts.Part;
import org.baywright.render.dimension.Figure;

/** Says where on a member a plate lies, in the words of the drawing: upper edge, near side, marked end. */
final class AttachedWords {
    /** Plates nearer to a face than this lie on it, mm. */
    private static final double NEAR = 0.5;

    /** Figures print to a tenth. */
    private static final double NOTHING = 0.05;

    private final Part member;
    private final Attached plate;

    private AttachedWords(Part member, Attached plate) {
        this.member = member;
        this.plate = plate;
    }

    /** Such as {@code upper edge, 30 to the near side}. */
    static String of(Part member, Attached plate) {
        return new AttachedWords(member, plate).words();
    }

    /** Where the plate of a lifting beam lies on its bracket, such as {@code foot of LK1, middle 61.5 to the far end}. */
    static String onBracket(Assembly assembly, Attached plate) {
        Attached bracket = assembly.bracketUnder(plate);
        Vec3 middle = bracket.at().toLocal(plate.middle());
        String mark = bracket.plate().mark();
        if (!plate.isHung()) {
            double from = middle.x() - plate.plate().solid().profile().depth() / 2;
            return "along " + mark + ", " + Figure.length(from) + " off its root";
        }
        Vec3 foot = bracket.at().toWorld(0, 0, 0);
        String end = plate.middle().x() > foot.x() ? " to the far end" : " to the marked end";
        return "foot of " + mark
                + (Math.abs(middle.y()) < NOTHING ? "" : ", middle " + Figure.length(Math.abs(middle.y())) + end);
    }

    private String words() {
        Vec3 middle = plate.middle();
        if (plate.isOnAnEnd()) {
            boolean first = middle.x() < member.solid().axisLength() / 2;
            return (first ? "marked end" : "far end") + up(middle.y()) + across(middle.z()) + turned();
        }
        if (middle.y() > edge(true, true) - NEAR || middle.y() < edge(true, false) + NEAR) {
            return (middle.y() > 0 ? "upper edge" : "lower edge") + across(middle.z()) + turned();
        }
        return (middle.z() > 0 ? "near side" : "far side") + up(middle.y()) + turned();
    }

    private double edge(boolean depth, boolean most) {
        Profile profile = member.solid().profile();
        DoubleStream values = profile.outline().stream().mapToDouble(depth ? Vec2::x : Vec2::y);
        return (most ? values.max() : values.min()).orElseThrow();
    }

    private static String up(double y) {
        return Math.abs(y) < NOTHING ? "" : ", middle " + Figure.length(Math.abs(y)) + (y > 0 ? " up" : " down");
    }

    private static String across(double z) {
        return Math.abs(z) < NOTHING
                ? ""
                : ", middle " + Figure.length(Math.abs(z)) + " to the " + (z > 0 ? "near" : "far") + " side";
    }

    /** A plate of which no side runs along the member, such as a plumb one on a rafter. */
    private String turned() {
        double closest = DoubleStream.of(
                        plate.at().along().x(),
                        plate.at().depth().x(),
                        plate.at().width().x())
                .map(Math::abs)
                .max()
                .orElseThrow();
        double deg = Math.toDegrees(Math.acos(Math.min(1, closest)));
        return deg < NOTHING ? "" : ", turned " + Figure.angle(deg);
    }
}
