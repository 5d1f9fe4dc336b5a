package org.baywright.render.sheet;

import java.util.stream.DoubleStream;
import org.baywright.model.geometry.Profile;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
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
