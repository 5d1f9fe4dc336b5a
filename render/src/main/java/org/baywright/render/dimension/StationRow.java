package org.baywright.render.dimension;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.baywright.model.geometry.Vec2;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Text;
import org.baywright.render.paper.Face;

/**
 * Running dimensions under a piece whose length may be drawn shortened: each place on paper is given together with what
 * it says, so that the figures stay true whatever is left out. A circle at the datum, an arrow at each place, the figure
 * along the end of its extension line.
 *
 * <p>@source ISO 129-1, superimposed running dimensions (from memory)
 *
 * @param datum where the datum lies across the paper, mm
 * @param stations in any order
 * @param low the least place across the paper that a figure may take
 * @param high the greatest
 */
public record StationRow(double datum, List<Station> stations, double low, double high) {
    /** From the view to the dimension line. */
    private static final double SPINE = 4;

    /** From the dimension line to the figures. */
    private static final double FIGURES = 4.5;

    private static final double LANE_GAP = 1.5;

    /**
     * One figure.
     *
     * @param at its place across the paper, mm
     * @param text what it says
     */
    public record Station(double at, String text) {}

    /** Puts the stations in order. */
    public StationRow {
        stations = stations.stream()
                .sorted(Comparator.comparingDouble(Station::at))
                .toList();
        if (stations.isEmpty()) {
            throw new IllegalArgumentException("a row of dimensions needs one");
        }
    }

    private Lanes lanes() {
        double[] wished = stations.stream().mapToDouble(Station::at).toArray();
        double[] sizes =
                stations.stream().mapToDouble(s -> Drafting.line() + 0.1).toArray();
        return Lanes.of(wished, sizes, low, high)
                .orElseThrow(() -> new IllegalStateException("no room for " + stations.size() + " dimensions"));
    }

    private double longest() {
        return stations.stream()
                .mapToDouble(s -> Drafting.width(s.text()))
                .max()
                .orElseThrow();
    }

    /** How far it reaches down from the view, mm. */
    public double depth() {
        return SPINE + FIGURES + lanes().count() * (longest() + LANE_GAP);
    }

    /** Draws under a view whose foot lies at a height of the paper. */
    public List<Mark> draw(double foot) {
        List<Mark> marks = new ArrayList<>();
        double y = foot - SPINE;
        double first = Math.min(datum, stations.get(0).at());
        double last = Math.max(datum, stations.get(stations.size() - 1).at());
        marks.add(Ink.thin(new Vec2(first, y), new Vec2(last, y), Layer.DIMENSION));
        marks.add(Ink.ring(new Vec2(datum, y), 1, Layer.DIMENSION));
        Lanes lanes = lanes();
        for (int i = 0; i < stations.size(); i++) {
            Station station = stations.get(i);
            double x = station.at();
            double centre = lanes.centres()[i];
            double near = y - FIGURES - lanes.lane(i) * (longest() + LANE_GAP);
            marks.add(Ink.thin(
                    List.of(
                            new Vec2(x, foot - Drafting.OFF),
                            new Vec2(x, y - Drafting.PASS),
                            new Vec2(centre, near + 0.6)),
                    Layer.DIMENSION));
            if (Math.abs(x - datum) > 0.01) {
                marks.add(Ink.arrow(new Vec2(x, y), new Vec2(Math.signum(x - datum), 0), Layer.DIMENSION));
            }
            // The box of a line is taller above the capitals than below the baseline; centre the box.
            double baseline = centre + (Drafting.ascent() - Drafting.descent()) / 2;
            marks.add(new Text(
                    station.text(),
                    new Vec2(baseline, near),
                    Drafting.TEXT,
                    Text.Align.RIGHT,
                    90,
                    Face.REGULAR,
                    Layer.DIMENSION,
                    ""));
        }
        return marks;
    }
}
