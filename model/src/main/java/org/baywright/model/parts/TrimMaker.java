package org.baywright.model.parts;

import java.util.List;
import java.util.stream.Stream;
import org.baywright.model.definition.Member;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Solid;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.setout.OpeningPlace;

/**
 * Headers over the openings of a bay and sills under its windows, between the jambs and flush with them outside.
 *
 * @param bay the bay
 */
record TrimMaker(WallBay bay) {
    List<Piece> pieces() {
        return bay.openings().stream().flatMap(this::trims).toList();
    }

    private Stream<Piece> trims(OpeningPlace opening) {
        Piece header = trim(PartKind.HEADER, opening, opening.head() + member().width() / 2);
        return opening.sill() > member().width()
                ? Stream.of(header, trim(PartKind.SILL, opening, opening.sill() - member().width() / 2))
                : Stream.of(header);
    }

    private Member member() {
        return bay.post();
    }

    private Piece trim(PartKind kind, OpeningPlace opening, double height) {
        // The width of its section counts down.
        Vec2 middle = member().profile().middle();
        Vec3 from = bay.face().toWorld(opening.left(), height + middle.y(), -member().depth() / 2 - middle.x());
        Placement at = Placement.of(from, bay.u(), bay.out());
        return new Piece(
                kind,
                new Material.Bar(member().section(), member().turned()),
                Solid.square(member().profile(), 0, opening.width()),
                List.of(),
                bay.place(at));
    }
}
