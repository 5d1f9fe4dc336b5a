package org.baywright.model.parts;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.baywright.model.catalogue.BarSection;
import org.baywright.model.catalogue.Section;
import org.baywright.model.definition.Side;
import org.baywright.model.geometry.Profile;
import org.baywright.model.geometry.Solid;
import org.baywright.model.geometry.Tolerance;
import org.baywright.model.geometry.Vec3;

/**
 * One piece of work and all the places it goes to. Same mark means same section, length, cuts, holes and hand.
 *
 * @param mark such as {@code C1}
 * @param kind what it is in the building
 * @param material what it is cut from
 * @param solid its shape in its own axes, from zero along
 * @param holes through its thickness; plates only
 * @param punched distances along a row from its marked end to each pair of bolt holes, mm
 * @param places where it stands
 */
public record Part(
        String mark,
        PartKind kind,
        Material material,
        Solid solid,
        List<Hole> holes,
        List<Double> punched,
        List<Place> places) {
    /** Copies the lists. */
    public Part {
        punched = List.copyOf(punched);
        holes = List.copyOf(holes);
        places = List.copyOf(places);
        if (places.isEmpty()) {
            throw new IllegalArgumentException("a part stands somewhere: " + mark);
        }
    }

    /** How many. */
    public int quantity() {
        return places.size();
    }

    /** Tip to tip of a member, or the longer side of a plate, rounded for the shop. */
    public double stockLength() {
        return Tolerance.fabricated(kind.isMember() ? solid.stockLength() : longerSide());
    }

    /** The long edge in the plane of the cuts, rounded for the shop. */
    public double longEdge() {
        return Tolerance.fabricated(kind.isMember() ? solid.longEdge() : longerSide());
    }

    /** The short edge in the plane of the cuts, rounded for the shop. */
    public double shortEdge() {
        return Tolerance.fabricated(kind.isMember() ? solid.shortEdge() : longerSide());
    }

    private double longerSide() {
        Profile face = solid.profile();
        return Math.max(face.depth(), face.width());
    }

    /** Saw angle from square at the marked end, degrees. */
    public double cutADeg() {
        return solid.startAngleDeg();
    }

    /** Saw angle from square at the far end, degrees. */
    public double cutBDeg() {
        return solid.endAngleDeg();
    }

    /** The shape the two cuts give it. */
    public CutForm cutForm() {
        return CutForm.of(solid.startSlope(), solid.endSlope());
    }

    /** Whether it is a round bar, many-sided in the model. */
    public boolean isRod() {
        return material instanceof Material.Bar bar
                && bar.section() instanceof BarSection section
                && section.form() == BarSection.Form.ROUND;
    }

    /** Whether it is a cleat without holes: it is welded to a member and carries another cleat, which stands off that. */
    public boolean isSeat() {
        return kind.group() == PartKind.Group.CLEATS && holes.isEmpty();
    }

    /** Mass of one, holes taken out. */
    public double massKg() {
        return solid.volume() * Section.DENSITY_KG_PER_M3 * 1e-9;
    }

    /** Mass of all. */
    public double totalMassKg() {
        return massKg() * quantity();
    }

    /** Painted surface of one, m². */
    public double surfaceM2() {
        return material.surfaceM2(kind.isMember() ? solid.axisLength() : longerSide());
    }

    /** Between the outer hole lines, the plate's depth by its width, such as {@code 120 x 160}; empty without holes. */
    public String holeGauges() {
        return holes.isEmpty() ? "" : gauge(h -> h.at().x()) + " x " + gauge(h -> h.at().y());
    }

    private String gauge(ToDoubleFunction<Hole> place) {
        var span = holes.stream().mapToDouble(place).summaryStatistics();
        double gauge = Tolerance.fabricated(span.getMax() - span.getMin());
        return gauge == Math.rint(gauge) ? String.valueOf(Math.round(gauge)) : String.valueOf(gauge);
    }

    /** Centre of gravity in the part's own axes: along from the marked end, depth, width. */
    public Vec3 centreOfGravity() {
        return solid.centreOfGravity();
    }

    /**
     * Which face of a member carries the long point, as the member stands: a column's inside or outside, an end-wall
     * upright's side that the rafter rises to; for a piece
     * cut alike at both ends, the face that leads at its upper end. Empty for square cuts.
     */
    public String longPoint() {
        return switch (cutForm()) {
            case SQUARE -> "";
            case MITRE, OPPOSED -> facing(solid.endSlope() > 0);
            case PARALLEL -> facing(solid.endSlope() > 0) + " at upper end";
        };
    }

    /** What the face on the depth's positive or negative side looks to, at the first place. */
    private String facing(boolean positive) {
        Place place = places.get(0);
        Vec3 out = place.placement().depth().times(positive ? 1 : -1);
        if (Math.abs(out.z()) > Math.abs(out.x())) {
            return out.z() > 0 ? "top" : "underside";
        }
        boolean inward = out.x() > 0 == (place.side() == Side.LEFT);
        if (kind.group() == PartKind.Group.WALL) {
            return "uphill side";
        }
        return inward ? "inside" : "outside";
    }
}
