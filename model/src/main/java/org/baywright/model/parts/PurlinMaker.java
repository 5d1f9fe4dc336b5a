package org.baywright.model.parts;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.baywright.model.definition.Member;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Solid;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.setout.RoofRows;
import org.baywright.model.setout.RowStand;

/**
 * The purlins of one slope, one length to a bay.
 *
 * <p>Where Zs lap, every second length lies one thickness down the slope, its web beside its neighbours'. Their flanges,
 * which spring over each other on site, share that thickness in the model.
 *
 * @param bays where each length starts, ends and is bolted
 */
record PurlinMaker(RowBays bays) {
    private RoofRows rows() {
        return bays.rows();
    }

    Stream<Piece> pieces() {
        return IntStream.range(0, rows().at().size())
                .boxed()
                .flatMap(row -> bays.bays().mapToObj(bay -> purlin(row, bay)));
    }

    /** A length that is the same end for end is laid with the nearer bolts at its marked end. */
    private Piece purlin(int row, int bay) {
        boolean onward = rows().slope().line().inward() > 0;
        Piece made = laid(row, bay, onward);
        Piece other = laid(row, bay, !onward);
        return rows().stand().isLapped() || !before(other.punched(), made.punched()) ? made : other;
    }

    /** A Z lies one way only; it would show its other hand when laid end for end. */
    private Piece laid(int row, int bay, boolean onward) {
        RowStand stand = rows().standOf(row);
        Member member = stand.member();
        double from = bays.start(bay);
        double to = bays.end(bay);
        double marked = onward ? from : to;
        Vec3 along = onward ? Vec3.ALONG : Vec3.ALONG.negated();
        Vec3 width = stand.turned() ? rows().up().negated() : rows().up();
        // A channel laid end for end stands on its other flange; hollow sections and top hats turn their sides.
        Vec3 depth =
                stand.isChannel() ? width.cross(along) : rows().slope().roof().outward();
        double up = rows().at().get(row) + stand.centroidUp() - bays.aside(bay);
        Placement at = Placement.of(rows().place(up, marked, stand.centroidHeight()), along, depth);
        List<Double> punched =
                bays.bolts(bay).stream().map(y -> Math.abs(y - marked)).sorted().toList();
        return new Piece(
                PartKind.PURLIN,
                new Material.Bar(member.section(), member.turned()),
                Solid.square(member.profile(), 0, to - from),
                List.of(),
                punched,
                new Place(at, bay, rows().slope().side()));
    }

    private static boolean before(List<Double> a, List<Double> b) {
        for (int i = 0; i < a.size(); i++) {
            long step = Math.round(10 * a.get(i)) - Math.round(10 * b.get(i));
            if (step != 0) {
                return step < 0;
            }
        }
        return false;
    }
}
