package org.baywright.model.takeoff;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;
import org.baywright.model.geometry.Placement;
import org.baywright.model.geometry.Solid;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.Assembly;
import org.baywright.model.parts.Attached;
import org.baywright.model.parts.Part;

/** Steel that hangs together, weighed where it stands. */
record Hung(double massKg, Vec3 centre, double low, double high) {
    /** One part somewhere. */
    static Hung of(Part part, Placement at) {
        Solid solid = part.solid();
        List<Vec3> corners = Stream.concat(
                        solid.startRing(solid.profile().outline()).stream(),
                        solid.endRing(solid.profile().outline()).stream())
                .map(at::toWorld)
                .toList();
        double low = corners.stream().mapToDouble(Vec3::z).min().orElseThrow();
        double high = corners.stream().mapToDouble(Vec3::z).max().orElseThrow();
        return new Hung(part.massKg(), at.toWorld(part.centreOfGravity()), low, high);
    }

    /** A member with its plates somewhere. */
    static Hung of(Assembly assembly, Placement at) {
        List<Hung> steel = new ArrayList<>(List.of(of(assembly.member(), at)));
        for (Attached plate : assembly.welded()) {
            steel.add(of(plate.plate(), at.then(plate.at())));
        }
        return together(steel);
    }

    /** Several as one. */
    static Hung together(Collection<Hung> steel) {
        double mass = steel.stream().mapToDouble(Hung::massKg).sum();
        Vec3 centre = steel.stream().map(h -> h.centre.times(h.massKg / mass)).reduce(Vec3.ZERO, Vec3::plus);
        double low = steel.stream().mapToDouble(Hung::low).min().orElseThrow();
        double high = steel.stream().mapToDouble(Hung::high).max().orElseThrow();
        return new Hung(mass, centre, low, high);
    }
}
