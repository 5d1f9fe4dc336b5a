package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Place;
import org.baywright.model.parts.Shed;

/**
 * Frames made of the same marks on the same sides: one cross-section serves them all.
 *
 * @param number from 1, in the order of first frames
 * @param frames their numbers, ascending
 */
record FrameType(int number, List<Integer> frames) {
    /** Copies the list. */
    FrameType {
        frames = List.copyOf(frames);
    }

    /** The types of a shed. */
    static List<FrameType> of(Shed shed) {
        Map<List<String>, List<Integer>> byMakeUp = new LinkedHashMap<>();
        makeUps(shed)
                .forEach((frame, makeUp) -> byMakeUp.computeIfAbsent(
                                makeUp.stream().sorted().toList(), k -> new ArrayList<>())
                        .add(frame));
        List<FrameType> types = new ArrayList<>();
        byMakeUp.values().forEach(frames -> types.add(new FrameType(types.size() + 1, frames)));
        return types;
    }

    private static Map<Integer, List<String>> makeUps(Shed shed) {
        Map<Integer, List<String>> makeUps = new TreeMap<>();
        for (Part part : shed.parts().stream().filter(FrameType::makesFrame).toList()) {
            for (Place place : part.places()) {
                makeUps.computeIfAbsent(place.frame(), f -> new ArrayList<>()).add(part.mark() + place.side());
            }
        }
        return makeUps;
    }

    /** Rows, cleats and bracing go on frames of every type; base plates follow columns, and stand under jambs too; a lifting beam goes
     * with its brackets. */
    private static boolean makesFrame(Part part) {
        return part.kind().isOfFrame() && part.kind() != PartKind.BASE_PLATE && part.kind() != PartKind.LIFTING_BEAM;
    }

    /** The frame that is drawn. */
    int shown() {
        return frames.get(0);
    }

    /** As {@code frames 1, 3 to 7}. */
    String names() {
        List<String> runs = new ArrayList<>();
        for (int i = 0; i < frames.size(); ) {
            int j = i;
            while (j + 1 < frames.size() && frames.get(j + 1) == frames.get(j) + 1) {
                j++;
            }
            runs.add(run(frames.get(i), frames.get(j)));
            i = j + 1;
        }
        return (frames.size() == 1 ? "frame " : "frames ") + String.join(", ", runs);
    }

    private static String run(int first, int last) {
        if (first == last) {
            return String.valueOf(first);
        }
        return first + (last == first + 1 ? ", " : " to ") + last;
    }
}
