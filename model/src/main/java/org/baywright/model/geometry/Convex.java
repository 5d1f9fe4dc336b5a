package org.baywright.model.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * A convex lump of steel in the building: the overlap of half-spaces. What hides lines and what may not run into
 * anything else is asked of these, never of drawn lines.
 *
 * @param faces the planes that bound it, normals outward
 * @param corners its corners
 */
public record Convex(List<Plane> faces, List<Vec3> corners) {
    /** Copies the lists. */
    public Convex {
        faces = List.copyOf(faces);
        corners = List.copyOf(corners);
    }

    /** The convex lumps of a solid, where it stands. */
    public static List<Convex> of(Solid solid, Placement place) {
        return solid.profile().pieces().stream()
                .map(piece -> of(solid, piece, place))
                .toList();
    }

    private static Convex of(Solid solid, List<Vec2> piece, Placement place) {
        List<Plane> faces = new ArrayList<>();
        faces.add(place.toWorld(solid.start()));
        faces.add(place.toWorld(solid.end()));
        for (int i = 0; i < piece.size(); i++) {
            Vec2 a = piece.get(i);
            Vec2 step = piece.get((i + 1) % piece.size()).minus(a);
            // The outline runs anticlockwise, so outward lies to the right of each side.
            Vec3 outward = new Vec3(0, step.y(), -step.x());
            faces.add(place.toWorld(Plane.through(new Vec3(0, a.x(), a.y()), outward)));
        }
        List<Vec3> corners = new ArrayList<>();
        solid.startRing(piece).forEach(p -> corners.add(place.toWorld(p)));
        solid.endRing(piece).forEach(p -> corners.add(place.toWorld(p)));
        return new Convex(faces, corners);
    }

    /** How far a position lies outside: the largest distance in front of any face; negative inside. */
    public double distance(Vec3 position) {
        return faces.stream().mapToDouble(f -> f.distance(position)).max().orElseThrow();
    }
}
