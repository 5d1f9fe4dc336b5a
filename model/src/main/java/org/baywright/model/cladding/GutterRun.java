package org.baywright.model.cladding;

import java.util.List;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.RoofSlope;
import org.baywright.model.setout.SetOut;

/**
 * A gutter along one eave with its downpipes.
 *
 * @param slope the roof that drains into it
 * @param from its end near frame 1, top edge of its back: on the wall sheets, or on its support over an open wall
 * @param to its other end
 * @param catchmentM2 of all roof that drains into it, as the drainage standard counts it
 * @param flowLs litres a second at the design rainfall
 * @param downpipes where the pipes drop from it
 */
public record GutterRun(RoofSlope slope, Vec3 from, Vec3 to, double catchmentM2, double flowLs, List<Vec3> downpipes) {
    private static final double ON_LINE = 1;

    /** Copies the list. */
    public GutterRun {
        downpipes = List.copyOf(downpipes);
    }

    /** Height of the foot of one of its pipes: on the roof of a lean-to that it stands over, else on the floor. */
    public double foot(Shed shed, Vec3 pipe) {
        SetOut setOut = shed.setOut();
        double purlin = shed.definition().envelope().purlins().member().depth();
        return setOut.leanTos().stream()
                .filter(l -> !slope.line().leanTo() && l.side() == slope.side())
                .filter(l -> pipe.y() >= setOut.frameLine(l.firstFrame()) - ON_LINE
                        && pipe.y() <= setOut.frameLine(l.lastFrame()) + ON_LINE)
                .mapToDouble(l -> l.roof().heightAt(pipe.x()) + l.roof().plumb(purlin))
                .findFirst()
                .orElse(0);
    }

    /** How long it is. */
    public double length() {
        return from.distance(to);
    }
}
