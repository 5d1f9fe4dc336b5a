package org.baywright.model.parts;

import java.util.List;
import java.util.Optional;
import org.baywright.model.definition.Anchor;
import org.baywright.model.geometry.Tolerance;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.setout.BarGrid;
import org.baywright.model.setout.BarGrid.Meeting;
import org.baywright.model.setout.BarShift;
import org.baywright.model.setout.OneWayShift;
import org.baywright.model.setout.SlabEdge;

/**
 * Every anchor hole of a shed against the bars in its slab.
 *
 * @param grid the bars
 * @param stands the plates
 */
public record BarCheck(BarGrid grid, List<PlateStand> stands) {
    /** Copies the list. */
    public BarCheck {
        stands = List.copyOf(stands);
    }

    /** The check of a shed; empty when its bars are not known. */
    public static Optional<BarCheck> of(Shed shed) {
        return BarGrid.of(shed.definition()).map(grid -> new BarCheck(grid, PlateStand.of(shed)));
    }

    /** How many holes lie so to the bars. */
    public long count(Meeting meeting) {
        return holes().stream().filter(h -> grid.meeting(h) == meeting).count();
    }

    private List<Vec2> holes() {
        return stands.stream().flatMap(s -> s.holes().stream()).toList();
    }

    /** The plates with a hole that lies so to the bars. */
    public List<PlateStand> with(Meeting meeting) {
        return stands.stream()
                .filter(s -> s.holes().stream().anyMatch(h -> grid.meeting(h) == meeting))
                .toList();
    }

    /** The smallest shift of all the bars that clears every hole; empty when there is none. */
    public Optional<BarShift> barShift() {
        return grid.shift(holes());
    }

    /** What can be cleared by moving the bars of one way, where nothing clears both. */
    public Optional<OneWayShift> oneWayShift() {
        return grid.oneWay(holes());
    }

    /** Whether a plate's holes, once it is moved, still stand the product's least distance inside the slab's edge. */
    public static boolean keepsEdge(SlabEdge edge, Anchor anchor, PlateStand stand, BarShift plate) {
        double least = anchor.minimumEdge() - Tolerance.COINCIDENT;
        return stand.holes().stream()
                .allMatch(h -> edge.distance(new Vec2(h.x() + plate.across(), h.y() + plate.along())) >= least);
    }

    /** The smallest shift of one plate that clears its holes; empty when there is none. */
    public Optional<BarShift> plateShift(PlateStand stand) {
        return grid.shift(stand.holes()).map(BarShift::reversed);
    }
}
