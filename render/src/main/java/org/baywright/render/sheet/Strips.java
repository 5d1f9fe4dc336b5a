package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import org.baywright.render.paper.Scale;
import org.locationtech.jts.geom.Envelope;

/**
 * How a view along the building is parted so that it can be read: whole when that is large enough, else in runs of bays
 * one under the other, on as many sheets as they need. Neighbouring strips share the frame where they match.
 *
 * @param scale of all strips
 * @param strips in order along the building
 */
record Strips(Scale scale, List<Strip> strips) {
    /** A plan or elevation smaller than this is of no use on a site; trade scales run from 1:100 to 1:200. */
    static final Scale SMALLEST = new Scale(200);

    /** Copies the list. */
    Strips {
        strips = List.copyOf(strips);
    }

    /**
     * The strips of a view.
     *
     * @param frameLines where the frames stand along the view
     * @param beyond how far the view reaches past the first and last frame of a strip
     * @param tall how much the view takes the other way
     * @param margins round each strip
     */
    static Strips of(List<Double> frameLines, double beyond, double tall, Envelope room, Margins margins) {
        return of(frameLines, beyond, tall, room, margins, SMALLEST);
    }

    /** The same, parted where they would be smaller than a scale; strips that are too tall for it stay smaller. */
    static Strips of(
            List<Double> frameLines, double beyond, double tall, Envelope room, Margins margins, Scale smallest) {
        double length = frameLines.get(frameLines.size() - 1) - frameLines.get(0) + 2 * beyond;
        Scale whole = PlacedView.fitting(room, new Envelope(0, length, 0, tall), margins);
        if (whole.n() <= smallest.n() || frameLines.size() == 2) {
            return new Strips(whole, List.of(new Strip(1, frameLines.size(), 0, room)));
        }
        Scale tallest = PlacedView.fitting(room, new Envelope(0, 0, 0, tall), margins);
        Scale scale = tallest.n() > smallest.n() ? tallest : smallest;
        double capacity = margins.within(room).getWidth() * scale.n() - 2 * beyond;
        double each = scale.toPaper(tall) + margins.above() + margins.below() + PlacedView.FOOT;
        int perSheet = Math.max(1, (int) (room.getHeight() / each));
        return new Strips(scale, placed(ends(frameLines, capacity), room, perSheet));
    }

    /** The last frame of each strip: even runs when they fit, else as much as each can hold. */
    private static List<Integer> ends(List<Double> lines, double capacity) {
        List<Integer> full = full(lines, capacity);
        int bays = lines.size() - 1;
        List<Integer> even = new ArrayList<>();
        for (int i = 1; i <= full.size(); i++) {
            even.add((int) Math.ceil((double) bays * i / full.size()) + 1);
        }
        return fits(even, lines, capacity) ? even : full;
    }

    private static List<Integer> full(List<Double> lines, double capacity) {
        List<Integer> ends = new ArrayList<>();
        int first = 1;
        while (first < lines.size()) {
            int end = first + 1;
            while (end < lines.size() && lines.get(end) - lines.get(first - 1) <= capacity) {
                end++;
            }
            ends.add(end);
            first = end;
        }
        return ends;
    }

    private static boolean fits(List<Integer> ends, List<Double> lines, double capacity) {
        int first = 1;
        for (int end : ends) {
            if (end <= first || lines.get(end - 1) - lines.get(first - 1) > capacity) {
                return false;
            }
            first = end;
        }
        return true;
    }

    private static List<Strip> placed(List<Integer> ends, Envelope room, int perSheet) {
        int sheets = (ends.size() + perSheet - 1) / perSheet;
        int rows = (ends.size() + sheets - 1) / sheets;
        List<Strip> strips = new ArrayList<>();
        int first = 1;
        for (int i = 0; i < ends.size(); i++) {
            strips.add(new Strip(first, ends.get(i), i / rows, Cells.row(room, i % rows, rows)));
            first = ends.get(i);
        }
        return strips;
    }

    /** Whether the view had to be parted. */
    boolean parted() {
        return strips.size() > 1;
    }

    /** What a strip is called, by its lines when there are several. */
    String name(String view, Strip strip) {
        return view + (parted() ? ", LINES " + strip.firstFrame() + " TO " + strip.lastFrame() : "");
    }

    /** How many sheets they take. */
    int sheets() {
        return strips.get(strips.size() - 1).sheet() + 1;
    }

    /** Those on one sheet. */
    List<Strip> on(int sheet) {
        return strips.stream().filter(s -> s.sheet() == sheet).toList();
    }

    /** Whether these are larger than others, or as large in fewer pieces. */
    boolean betterThan(Strips other) {
        if (scale.n() != other.scale.n()) {
            return scale.n() < other.scale.n();
        }
        return sheets() != other.sheets() ? sheets() < other.sheets() : strips.size() < other.strips.size();
    }
}
