package org.baywright.model.setout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.baywright.model.definition.Definition;

/**
 * The uprights of a sheeted bay between its columns: a jamb on either side of every opening, which
 * those over each other share, and mullions wherever the
 * room that is left is wider than they may stand apart.
 *
 * @param cover the bay
 * @param posts from left to right
 */
public record WallPosts(WallCover cover, List<Post> posts) {
    /**
     * An upright with its middle at a place along the wall.
     *
     * @param jamb beside an opening; otherwise a mullion
     */
    public record Post(double u, boolean jamb) {}

    /** Copies the list. */
    public WallPosts {
        posts = List.copyOf(posts);
    }

    /** The uprights of a bay; side walls have no mullions, their girts run from column to column. */
    public static WallPosts of(Definition definition, WallCover cover, List<OpeningPlace> openings) {
        double half = definition.envelope().walls().mullions().member().width() / 2;
        List<OpeningPlace> here = in(cover, openings);
        List<Post> posts = new ArrayList<>();
        double from = cover.bay().from();
        for (OpeningPlace opening : here) {
            if (here.stream().anyMatch(opening::isOver)) {
                continue;
            }
            mullions(definition, cover, from, opening.left() - half, posts);
            posts.add(new Post(opening.left() - half, true));
            posts.add(new Post(opening.right() + half, true));
            from = opening.right() + half;
        }
        mullions(definition, cover, from, cover.bay().to(), posts);
        return new WallPosts(cover, posts);
    }

    /** The openings of a bay, from left to right; a bay left open has none. */
    public static List<OpeningPlace> in(WallCover cover, List<OpeningPlace> openings) {
        return openings.stream()
                .filter(o -> !o.isWholeBay()
                        && o.face().equals(cover.face())
                        && o.bay().equals(cover.bay()))
                .sorted(Comparator.comparingDouble(OpeningPlace::left))
                .toList();
    }

    private static void mullions(Definition definition, WallCover cover, double from, double to, List<Post> posts) {
        if (!cover.face().wall().isEnd()) {
            return;
        }
        double spacing = definition.envelope().walls().mullions().spacing();
        int spaces = (int) Math.ceil((to - from) / spacing - 1e-9);
        for (int i = 1; i < spaces; i++) {
            posts.add(new Post(from + (to - from) * i / spaces, false));
        }
    }
}
