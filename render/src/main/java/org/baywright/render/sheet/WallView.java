package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.baywright.model.geometry.Tolerance;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.ColumnLine;
import org.baywright.model.setout.GirtRows;
import org.baywright.model.setout.OpeningPlace;
import org.baywright.model.setout.WallFace;
import org.baywright.render.view.Item;
import org.baywright.render.view.Projection;
import org.baywright.render.view.Silhouette;
import org.locationtech.jts.geom.Envelope;

/**
 * What a framing elevation shows: a wall from outside with its frame, and the walls of lean-tos in the same plane.
 *
 * @param faces the wall, then those beside it in its plane
 * @param projection from outside
 * @param members all that stand in it, the furthest from the eye first
 * @param openings in it
 */
record WallView(List<WallFace> faces, Projection projection, List<MemberAxis> members, List<OpeningPlace> openings) {
    private static final Set<PartKind> FRAMES = EnumSet.of(
            PartKind.COLUMN, PartKind.LEAN_TO_COLUMN, PartKind.RAFTER, PartKind.LEAN_TO_RAFTER, PartKind.BASE_PLATE);
    /** What makes a wall worth a view. */
    private static final Set<PartKind> FRAMING =
            EnumSet.of(PartKind.MULLION, PartKind.JAMB, PartKind.HEADER, PartKind.GIRT, PartKind.BRACE);

    private static final Set<PartKind> IN_WALLS = EnumSet.of(
            PartKind.MULLION,
            PartKind.JAMB,
            PartKind.HEADER,
            PartKind.SILL,
            PartKind.GIRT,
            PartKind.BRACE,
            PartKind.STRUT,
            PartKind.BRIDGING,
            PartKind.GIRT_CLEAT,
            PartKind.MULLION_CLEAT,
            PartKind.JAMB_CLEAT,
            PartKind.BRACE_CLEAT,
            PartKind.BRACE_LUG);

    /** Copies the lists. */
    WallView {
        faces = List.copyOf(faces);
        members = List.copyOf(members);
        openings = List.copyOf(openings);
    }

    /** The walls of a shed in which anything stands besides frames. */
    static List<WallView> of(Shed shed) {
        WallMembers walls = new WallMembers(shed);
        List<MemberAxis> frames = MemberAxis.of(shed, FRAMES);
        List<MemberAxis> others = MemberAxis.of(shed, IN_WALLS);
        List<List<MemberAxis>> byWall = new ArrayList<>();
        List<WallFace> all = shed.walls();
        all.forEach(w -> byWall.add(new ArrayList<>()));
        others.forEach(
                m -> walls.of(m).ifPresent(w -> byWall.get(all.indexOf(w)).add(m)));
        List<WallView> views = new ArrayList<>();
        Set<WallFace> taken = new HashSet<>();
        for (WallFace wall : all) {
            if (taken.contains(wall)) {
                continue;
            }
            List<WallFace> faces =
                    all.stream().filter(w -> w == wall || inPlane(wall, w)).toList();
            taken.addAll(faces);
            List<MemberAxis> members = new ArrayList<>();
            faces.forEach(f -> members.addAll(byWall.get(all.indexOf(f))));
            if (members.stream().anyMatch(m -> FRAMING.contains(m.part().kind()))) {
                frames.stream()
                        .filter(m -> faces.stream().anyMatch(f -> WallMembers.isIn(m, f)))
                        .forEach(members::add);
                views.add(of(shed, faces, members));
            }
        }
        return views;
    }

    private static boolean inPlane(WallFace wall, WallFace other) {
        return wall.isMain()
                && wall.wall().isEnd()
                && other.wall() == wall.wall()
                && Tolerance.same(
                        wall.axes().origin().y(), other.axes().origin().y());
    }

    private static WallView of(Shed shed, List<WallFace> faces, List<MemberAxis> members) {
        Projection projection = Projection.of(faces.get(0).axes().along(), Vec3.UP);
        List<MemberAxis> ordered = new ArrayList<>(members);
        ordered.sort(Comparator.comparingDouble(m -> projection.nearness(m.middle())));
        List<OpeningPlace> openings =
                shed.openings().stream().filter(o -> faces.contains(o.face())).toList();
        return new WallView(faces, projection, ordered, openings);
    }

    WallFace wall() {
        return faces.get(0);
    }

    boolean isEnd() {
        return wall().wall().isEnd();
    }

    /** What it takes, in view mm, from the floor. */
    Envelope bounds() {
        List<Item> items = members.stream().map(MemberAxis::item).toList();
        Envelope bounds = Silhouette.bounds(items, projection);
        for (WallFace face : faces) {
            bounds.expandToInclude(x(face, 0), 0);
            bounds.expandToInclude(x(face, face.length()), 0);
            face.outline().forEach(p -> bounds.expandToInclude(x(face, p.x()), p.y()));
        }
        return bounds;
    }

    /** Where a place along one of its faces appears. */
    double x(WallFace face, double u) {
        return projection.flat(face.toWorld(u, 0, 0)).x();
    }

    /** Where a place along the building appears. */
    double along(double y) {
        return projection.flat(new Vec3(0, y, 0)).x();
    }

    /** Heights of the girts' backs from the floor up, of each bay in a window whose rows are its own. */
    List<List<Double>> girtHeights(Shed shed, Envelope window) {
        List<List<Double>> heights = shed.wallCovers().stream()
                .filter(cover -> faces.contains(cover.face()))
                .filter(cover -> {
                    double middle =
                            x(cover.face(), (cover.bay().from() + cover.bay().to()) / 2);
                    return middle > window.getMinX() && middle < window.getMaxX();
                })
                .map(cover ->
                        GirtRows.of(shed.definition(), shed.setOut(), cover).at())
                .filter(rows -> !rows.isEmpty())
                .distinct()
                .toList();
        return heights.stream()
                .filter(rows -> heights.stream().noneMatch(others -> !others.equals(rows) && others.containsAll(rows)))
                .toList();
    }

    /** Middles of uprights between the frames, and clear edges of openings, across the view. */
    List<Double> stations() {
        TreeSet<Double> at = new TreeSet<>();
        members.stream()
                .filter(m -> m.part().kind() == PartKind.MULLION)
                .forEach(m -> at.add(projection.flat(m.middle()).x()));
        for (OpeningPlace opening : openings) {
            if (!opening.isWholeBay()) {
                at.add(x(opening.face(), opening.left()));
                at.add(x(opening.face(), opening.right()));
            }
        }
        return List.copyOf(at);
    }

    /** Whether a column line of a lean-to stands in it. */
    boolean has(ColumnLine line) {
        return faces.stream().anyMatch(f -> f.leanTo().filter(line::equals).isPresent());
    }

    Vec2 flat(Vec3 at) {
        return projection.flat(at);
    }
}
