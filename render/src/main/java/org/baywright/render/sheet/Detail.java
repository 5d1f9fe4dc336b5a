package org.baywright.render.sheet;

import java.util.List;
import java.util.Set;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.PartKind;
import org.baywright.render.view.Projection;

/**
 * A place of the building that is shown close up.
 *
 * @param callout its number and sheet
 * @param title what it is
 * @param look from where
 * @param parts of the building it shows
 * @param clad whether sheets, flashings and gutters are drawn as the plane through its middle cuts them
 * @param frames whose cross-sections call it out
 */
record Detail(Callout callout, String title, Look look, Parts parts, boolean clad, Set<Integer> frames) {
    private static final Set<PartKind> HEADS = Set.of(PartKind.MULLION_CLEAT, PartKind.JAMB_CLEAT);

    /** Copies the set. */
    Detail {
        frames = Set.copyOf(frames);
    }

    /**
     * From where a place is looked at.
     *
     * @param view the direction
     * @param at the middle, in the building
     * @param reach half of what must be seen, mm on paper's axes
     */
    record Look(Projection view, Vec3 at, Vec2 reach) {
        /** The same every way round the middle. */
        static Look round(Projection view, Vec3 at, double reach) {
            return new Look(view, at, new Vec2(reach, reach));
        }
    }

    /**
     * The kinds of parts that a detail shows.
     *
     * @param drawn whole
     * @param cut shown only where the plane through the middle cuts them, because they would hide the others
     * @param named those of both that are named
     */
    record Parts(Set<PartKind> drawn, Set<PartKind> cut, List<PartKind> named) {
        /** Copies the collections. */
        Parts {
            drawn = Set.copyOf(drawn);
            cut = Set.copyOf(cut);
            named = List.copyOf(named);
        }

        static Parts whole(Set<PartKind> drawn, List<PartKind> named) {
            return new Parts(drawn, Set.of(), named);
        }
    }

    Projection view() {
        return look.view();
    }

    Vec3 at() {
        return look.at();
    }

    /** Whether it shows what carries a lifting beam. */
    boolean isOfLifting() {
        return parts.named().contains(PartKind.LIFTING_BRACKET);
    }

    /** Whether it shows how the head of a mullion or jamb is held, and by which kind of cleat. */
    boolean isOfHead(PartKind cleat) {
        return HEADS.contains(cleat) && parts.named().contains(cleat);
    }
}
