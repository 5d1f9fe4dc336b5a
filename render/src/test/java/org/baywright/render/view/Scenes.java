package org.baywright.render.view;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.baywright.model.catalogue.BeamSection;
import org.baywright.model.catalogue.HollowSection;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Profile;
import org.baywright.model.geometry.Solid;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;

/** Small things to look at. */
final class Scenes {
    /** 200 deep, 100 wide, flanges 10, web 6. */
    static final Profile BEAM = new BeamSection("beam", 200, 100, 10, 6, 0, "", "test").profile();

    /** 100 × 60, walls 5. */
    static final Profile TUBE =
            HollowSection.asNzs1163("tube", 100, 60, 5, "", "test").profile();

    private Scenes() {}

    /** A block between two corners. */
    static Item box(String part, double x0, double y0, double z0, double x1, double y1, double z1) {
        Solid solid = Solid.square(Profile.rectangle(x1 - x0, y1 - y0), z0, z1);
        return new Item(part, solid, Placement.of(new Vec3((x0 + x1) / 2, (y0 + y1) / 2, 0), Vec3.UP, Vec3.ACROSS));
    }

    /** A piece lying across the building, its depth upright, from x = 0. */
    static Item across(String part, Profile profile, double length) {
        return new Item(part, Solid.square(profile, 0, length), Placement.of(Vec3.ZERO, Vec3.ACROSS, Vec3.UP));
    }

    /** Lines as sorted text, whole millimetres. */
    static Set<String> text(List<ViewLine> lines) {
        Set<String> text = new TreeSet<>();
        lines.forEach(l -> text.add(text(l.from()) + " - " + text(l.to()) + " " + l.part()));
        return text;
    }

    private static String text(Vec2 p) {
        return String.format(Locale.ROOT, "%d,%d", Math.round(p.x()), Math.round(p.y()));
    }
}
