package org.baywright.model.definition;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.baywright.model.problem.Where;

/**
 * Reads the lean-tos.
 *
 * @param file the top of the file
 * @param bays how many bays, or the most allowed when that is not known
 */
record LeanToReader(GroupReader file, int bays) {
    private static final int MOST = 2;

    List<LeanTo> read() {
        List<LeanTo> leanTos = new ArrayList<>();
        List<LeanTo> sided = new ArrayList<>();
        for (Located entry : entries()) {
            GroupReader group = GroupReader.of(entry, Keys.LEAN_TO, file.values());
            Optional<Side> side = group.choiceIfGiven("side", Side.class);
            LeanTo leanTo = leanTo(group, side.orElse(Side.LEFT));
            leanTos.add(leanTo);
            if (side.isPresent()) {
                sided.stream().filter(o -> share(leanTo, o)).forEach(o -> tellShared(o, entry.where()));
                sided.add(leanTo);
            }
        }
        return leanTos;
    }

    private List<Located> entries() {
        List<Located> entries = file.list("leanTos", "lean-tos, each {side, width, ...}");
        if (entries.size() > MOST) {
            String message = entries.size() + " lean-tos were read; at most two are allowed";
            file.findings().error("too-many-lean-tos", entries.get(MOST).where(), message, "remove what is over");
        }
        return entries;
    }

    private LeanTo leanTo(GroupReader group, Side side) {
        int from = bay(group, "fromBay", 1);
        int to = bay(group, "toBay", bays);
        if (from > to) {
            String message = "fromBay " + from + " comes after toBay " + to;
            group.findings().error("bay-order", group.where("fromBay"), message, "count bays from frame 1");
        }
        return new LeanTo(
                side,
                group.number("width"),
                group.number("pitch"),
                group.number("drop"),
                Math.min(from, to),
                Math.max(from, to));
    }

    private int bay(GroupReader group, String key, int usual) {
        OptionalDouble given = group.numberIfGiven(key);
        if (given.isPresent() && given.getAsDouble() > bays) {
            String message = "bay " + (int) given.getAsDouble() + " was read; the bays are 1 to " + bays;
            group.findings().error("no-such-bay", group.where(key), message, "write a bay from 1 to " + bays);
            return usual;
        }
        return (int) given.orElse(usual);
    }

    /** Two on one side may not stand on one column line, so at least one bay is left between them. */
    private static boolean share(LeanTo a, LeanTo b) {
        return a.side() == b.side() && a.firstFrame() <= b.lastFrame() && b.firstFrame() <= a.lastFrame();
    }

    private void tellShared(LeanTo other, Where where) {
        String message = "it shares frames with the other lean-to on that side, which has frames " + other.firstFrame()
                + " to " + other.lastFrame();
        file.findings().error("lean-tos-overlap", where, message, "change side, fromBay or toBay");
    }
}
