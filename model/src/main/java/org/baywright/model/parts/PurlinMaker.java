package org.baywright.model.parts;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.baywright.model.definition.Member;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Profile;
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
 * @param profile of every row
 */
record PurlinMaker(RowBays bays, Profile profile) {
    PurlinMaker(RowBays bays) {
        this(bays, bays.rows().stand().member().profile());
    }

    private RoofRows rows() {
        return bays.rows();
    }

    Stream<Piece> pieces() {
        return bays.bays().boxed().flatMap(this::bay);
    }

    private Stream<Piece> bay(int bay) {
        boolean onward = rows().slope().line().inward() > 0;
        boolean turnsRound = !rows().stand().isLapped() && before(punched(bay, !onward), punched(bay, onward));
        return length(bay, turnsRound != onward);
    }

    /** A length that is the same end for end is laid with the nearer bolts at its marked end; a Z is not the same. */
    private Stream<Piece> length(int bay, boolean onward) {
        List<Double> punched = punched(bay, onward);
        Solid solid = Solid.square(profile, 0, bays.end(bay) - bays.start(bay));
        return IntStream.range(0, rows().at().size()).mapToObj(row -> {
            Member member = rows().standOf(row).member();
            Material material = new Material.Bar(member.section(), member.turned());
            Place place = new Place(laid(row, bay, onward), bay, rows().slope().side());
            return new Piece(PartKind.PURLIN, material, solid, List.of(), punched, place);
        });
    }

    private double marked(int bay, boolean onward) {
        return onward ? bays.start(bay) : bays.end(bay);
    }

    private List<Double> punched(int bay, boolean onward) {
        double marked = marked(bay, onward);
        return bays.bolts(bay).stream().map(y -> Math.abs(y - marked)).sorted().toList();
    }

    private Placement laid(int row, int bay, boolean onward) {
        RowStand stand = rows().standOf(row);
        Vec3 along = onward ? Vec3.ALONG : Vec3.ALONG.negated();
        Vec3 width = stand.turned() ? rows().up().negated() : rows().up();
        // A channel laid end for end stands on its other flange; hollow sections and top hats turn their sides.
        Vec3 depth =
                stand.isChannel() ? width.cross(along) : rows().slope().roof().outward();
        double up = rows().at().get(row) + stand.centroidUp() - bays.aside(bay);
        return Placement.of(rows().place(up, marked(bay, onward), stand.centroidHeight()), along, depth);
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
