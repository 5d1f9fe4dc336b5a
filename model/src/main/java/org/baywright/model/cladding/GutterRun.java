package org.baywright.model.cladding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.ColumnLine;
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

    /**
     * The part of a gutter that falls to one downpipe.
     *
     * @param at where the pipe drops
     * @param from along the building, where the gutter starts to fall to it
     * @param to where that ends
     * @param catchmentM2 its share of the roof, by its length of gutter
     * @param flowLs its share of the water
     */
    public record Fall(Vec3 at, double from, double to, double catchmentM2, double flowLs) {
        /** The greater of what comes from either side, litres a second. */
        public double sideLs() {
            return flowLs * Math.max(to - at.y(), at.y() - from) / (to - from);
        }
    }

    /** Copies the list. */
    public GutterRun {
        downpipes = List.copyOf(downpipes);
    }

    /** Height of the foot of one of its pipes: on the roof of a lean-to that it stands over, else on the floor. */
    public double foot(Shed shed, Vec3 pipe) {
        double purlin = shed.definition().envelope().purlins().member().depth();
        return leanToBelow(shed, pipe)
                .map(l -> l.roof().heightAt(pipe.x()) + l.roof().plumb(purlin))
                .orElse(0.0);
    }

    /** Its pipes that end on a lean-to's roof, along the building. */
    public List<Fall> ontoLeanTos(Shed shed) {
        return falls().stream()
                .filter(f -> leanToBelow(shed, f.at()).isPresent())
                .toList();
    }

    /** The lean-to on whose roof a pipe ends. */
    Optional<ColumnLine> leanToBelow(Shed shed, Vec3 pipe) {
        SetOut setOut = shed.setOut();
        return setOut.leanTos().stream()
                .filter(l -> !slope.line().leanTo() && l.side() == slope.side())
                .filter(l -> pipe.y() >= setOut.frameLine(l.firstFrame()) - ON_LINE
                        && pipe.y() <= setOut.frameLine(l.lastFrame()) + ON_LINE)
                .findFirst();
    }

    /** What falls to each pipe, along the building: from the high points halfway to its neighbours. */
    public List<Fall> falls() {
        List<Vec3> at =
                downpipes.stream().sorted(Comparator.comparingDouble(Vec3::y)).toList();
        double low = Math.min(from.y(), to.y());
        double high = Math.max(from.y(), to.y());
        List<Fall> falls = new ArrayList<>();
        for (int i = 0; i < at.size(); i++) {
            double start = i == 0 ? low : (at.get(i - 1).y() + at.get(i).y()) / 2;
            double end =
                    i == at.size() - 1 ? high : (at.get(i).y() + at.get(i + 1).y()) / 2;
            double share = (end - start) / (high - low);
            falls.add(new Fall(at.get(i), start, end, share * catchmentM2, share * flowLs));
        }
        return falls;
    }

    /** How long it is. */
    public double length() {
        return from.distance(to);
    }
}
