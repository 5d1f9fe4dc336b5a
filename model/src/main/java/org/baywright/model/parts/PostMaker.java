package org.baywright.model.parts;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.baywright.model.definition.BasePlate;
import org.baywright.model.definition.Member;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Plane;
import org.baywright.model.geometry.Solid;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.setout.ColumnLine;
import org.baywright.model.setout.WallPosts.Post;

/**
 * The uprights of a bay: from a base plate to under the rafter of an end wall, or in a side wall to under the roof's
 * steel plane, less a gap to slip in; its cleat on top is slotted.
 *
 * <p>@source length = roof over it − rafter depth/cos θ − plate − grout − slip gap of 20 to 30: common practice
 *
 * @param bay the bay
 */
record PostMaker(WallBay bay) {
    /** Between two base plates. Common practice, no source. */
    private static final double PLATES_APART = 5;

    private Member member() {
        return bay.post();
    }

    /** A mullion stands like a column; a jamb's plate is no wider than the jamb, to leave the opening clear. */
    private BaseDesign base(Post post) {
        OptionalDouble open = OptionalDouble.empty();
        OptionalDouble along = post.jamb() ? OptionalDouble.of(member().width()) : open;
        return BaseDesign.of(
                new BasePlate(open, along, open, post.jamb() ? 2 : 4, open, open, open),
                member(),
                bay.definition().anchor());
    }

    private double grout() {
        return bay.definition().plates().groutGap();
    }

    List<Piece> pieces() {
        List<Piece> pieces = new ArrayList<>();
        for (Post post : bay.posts().posts()) {
            Placement foot = foot(post);
            boolean plated = isPlated(post);
            double from = plated ? base(post).thickness() : onColumnPlate(post);
            pieces.add(upright(post, foot.then(Placement.of(centred(from), Vec3.ACROSS, Vec3.UP))));
            if (plated) {
                pieces.add(plate(foot, base(post)));
            }
            pieces.addAll(new PostHead(bay, post).pieces());
        }
        return pieces;
    }

    /** Where an upright's centroid stands over its foot so that the middle of its section does. */
    private Vec3 centred(double from) {
        Vec2 middle = member().profile().turned().middle();
        return new Vec3(from, middle.y(), -middle.x());
    }

    List<Vec3> anchors() {
        return bay.posts().posts().stream()
                .filter(this::isPlated)
                .flatMap(post ->
                        base(post).holes().stream().map(h -> foot(post).toWorld(-grout(), h.at().x(), h.at().y())))
                .toList();
    }

    /**
     * Whether an upright has a plate of its own: beside a column, or beside another upright, there may be no room for
     * two; then it stands on the floor and is welded to its neighbour.
     */
    private boolean isPlated(Post post) {
        double half = base(post).depth() / 2 + PLATES_APART;
        Stream<Double> before = bay.posts().posts().stream()
                .map(Post::u)
                .filter(u -> u < post.u())
                .filter(u -> post.u() - u < 2 * half);
        return before.findAny().isEmpty() && columns().allMatch(c -> Math.abs(c[0] - post.u()) > half + c[1] / 2);
    }

    /** From the floor up to the base plate of the column beside an upright, when it stands on that. */
    private double onColumnPlate(Post post) {
        return columns()
                .filter(c -> Math.abs(c[0] - post.u()) < (c[1] + member().width()) / 2)
                .mapToDouble(c -> grout() + c[2])
                .max()
                .orElse(0);
    }

    /** Middle of each column of the bay along the wall, the width of its base plate there, and its thickness. */
    private Stream<double[]> columns() {
        double from = bay.cover().bay().from();
        double to = bay.cover().bay().to();
        if (bay.face().wall().isEnd()) {
            return Stream.of(endColumn(from, 1), endColumn(to, -1));
        }
        int number = bay.cover().bay().bay();
        return Stream.of(sideColumn(number), sideColumn(number + 1));
    }

    private double[] endColumn(double u, int into) {
        Vec3 at = bay.face().toWorld(u, 0, 0);
        ColumnLine line = bay.setOut().columnLines().stream()
                .min(Comparator.comparingDouble(l -> Math.abs(l.x() - at.x())))
                .orElseThrow();
        Member column = line.column(bay.definition(), bay.frame());
        boolean inside = (line.inward() > 0) == (bay.u().x() > 0) == (into > 0);
        BaseDesign design = BaseDesign.of(
                line.leanTo()
                        ? bay.definition().plates().leanToBase()
                        : bay.definition().plates().base(),
                column,
                bay.definition().anchor());
        return new double[] {u + (inside ? into : -into) * column.depth() / 2, design.width(), design.thickness()};
    }

    private double[] sideColumn(int frame) {
        ColumnLine line = bay.face().leanTo().orElseGet(() -> bay.setOut().main(bay.side()));
        Member column = line.column(bay.definition(), frame);
        BaseDesign design = BaseDesign.of(
                line.leanTo()
                        ? bay.definition().plates().leanToBase()
                        : bay.definition().plates().base(),
                column,
                bay.definition().anchor());
        double middle = bay.setOut().middle(frame, column.width());
        double u = (middle - bay.face().axes().origin().y()) * bay.u().y();
        return new double[] {u, design.depth(), design.thickness()};
    }

    /** On the slab or its grout, the outside face on the string line. */
    private Placement foot(Post post) {
        double floor = isPlated(post) ? grout() : 0;
        Vec3 at = bay.face().toWorld(post.u(), floor, -member().depth() / 2);
        return Placement.of(at, Vec3.UP, bay.out().negated());
    }

    private Piece plate(Placement foot, BaseDesign base) {
        return PlateMaker.plate(
                PartKind.BASE_PLATE, base.width(), base.depth(), base.thickness(), base.holes(), bay.place(foot));
    }

    private Piece upright(Post post, Placement at) {
        Plane top = at.toLocal(new PostHead(bay, post).top());
        // Its depth lies along the wall here, in the plane of the cut that follows the rake.
        Solid solid = new Solid(member().profile().turned(), new Plane(new Vec3(-1, 0, 0), 0), top);
        PartKind kind = post.jamb() ? PartKind.JAMB : PartKind.MULLION;
        return new Piece(
                kind,
                new Material.Bar(member().section(), !member().turned() && member().depth() != member().width()),
                solid,
                List.of(),
                bay.place(at));
    }
}
