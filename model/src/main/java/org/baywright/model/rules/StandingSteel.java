package org.baywright.model.rules;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.baywright.model.geometry.Clearance;
import org.baywright.model.geometry.Convex;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.Shed;

/**
 * One piece of steel where it stands in the shed.
 *
 * @param part what it is
 * @param lumps its steel as convex lumps
 */
record StandingSteel(Part part, List<Convex> lumps) {
    /** Steel that runs into other steel no deeper is taken to meet it, mm. */
    static final double MEETS = 0.5;

    /** All the steel of a shed, piece by piece. */
    static Stream<StandingSteel> of(Shed shed) {
        return shed.parts().stream()
                .flatMap(part -> part.places().stream()
                        .map(place -> new StandingSteel(part, Convex.of(part.solid(), place.placement()))));
    }

    boolean runsInto(StandingSteel other) {
        return lumps.stream().anyMatch(a -> other.lumps.stream().anyMatch(b -> Clearance.overlap(a, b) > MEETS));
    }

    double least(ToDoubleFunction<Vec3> of) {
        return corners(of).min().orElseThrow();
    }

    double most(ToDoubleFunction<Vec3> of) {
        return corners(of).max().orElseThrow();
    }

    private DoubleStream corners(ToDoubleFunction<Vec3> of) {
        return lumps.stream().flatMap(l -> l.corners().stream()).mapToDouble(of);
    }

    /** Whether some of it may lie in a box given by two corners in axes of its own: told by its bounds there. */
    boolean isWithin(Placement axes, Vec3 low, Vec3 high) {
        return reaches(p -> axes.toLocal(p).x(), low.x(), high.x())
                && reaches(p -> axes.toLocal(p).y(), low.y(), high.y())
                && reaches(p -> axes.toLocal(p).z(), low.z(), high.z());
    }

    private boolean reaches(ToDoubleFunction<Vec3> of, double low, double high) {
        return most(of) > low + MEETS && least(of) < high - MEETS;
    }
}
