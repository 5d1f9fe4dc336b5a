package org.baywright.model.cladding;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Side;
import org.baywright.model.definition.Wall;
import org.baywright.model.setout.ColumnLine;
import org.baywright.model.setout.SetOut;
import org.baywright.model.setout.WallCover;
import org.baywright.model.setout.WallFace;

/**
 * Neighbouring sheeted bays of a wall whose sheets start at one height: one surface.
 *
 * @param first its first bay, seen from outside from the left
 * @param last its last bay
 * @param meetsBefore whether sheets that start at another height go on beyond its first bay
 * @param meetsAfter whether they do beyond its last bay
 */
record WallRun(WallCover first, WallCover last, boolean meetsBefore, boolean meetsAfter) {
    /** Nearer than this to a wall's end is its end. */
    private static final double AT_END = 1;

    static List<WallRun> of(List<WallCover> covers) {
        List<WallRun> runs = new ArrayList<>();
        int first = 0;
        for (int i = 0; i < covers.size(); i++) {
            boolean meets = i + 1 < covers.size() && meet(covers.get(i), covers.get(i + 1));
            if (!meets || covers.get(i).low() != covers.get(i + 1).low()) {
                boolean before = first > 0 && meet(covers.get(first - 1), covers.get(first));
                runs.add(new WallRun(covers.get(first), covers.get(i), before, meets));
                first = i + 1;
            }
        }
        return runs;
    }

    private static boolean meet(WallCover a, WallCover b) {
        return a.face().equals(b.face()) && a.bay().to() == b.bay().from();
    }

    WallFace face() {
        return first.face();
    }

    /** Whether it has the whole length of its wall. */
    boolean isWhole() {
        return startsAtCorner() && endsAtCorner();
    }

    boolean startsAtCorner() {
        return first.bay().from() < AT_END;
    }

    boolean endsAtCorner() {
        return last.bay().to() > face().length() - AT_END;
    }

    /** Where it starts between two bays: on the frame line when sheets go on, or over the column beside an open bay. */
    double start(Definition definition, SetOut setOut) {
        return first.bay().from() - (meetsBefore ? 0 : halfColumn(definition, setOut, frame(first, true)));
    }

    /** Where it ends between two bays. */
    double end(Definition definition, SetOut setOut) {
        return last.bay().to() + (meetsAfter ? 0 : halfColumn(definition, setOut, frame(last, false)));
    }

    /** The line of the columns that carry a side wall. */
    private ColumnLine line(SetOut setOut) {
        return face().leanTo().orElseGet(() -> setOut.main(face().wall() == Wall.LEFT ? Side.LEFT : Side.RIGHT));
    }

    private double halfColumn(Definition definition, SetOut setOut, int frame) {
        return line(setOut).column(definition, frame).width() / 2;
    }

    /** The frame at one edge of a bay; seen from outside, the left wall has frame 1 at its right. */
    private int frame(WallCover cover, boolean atLeft) {
        boolean lower = atLeft != (face().wall() == Wall.LEFT);
        return cover.bay().bay() + (lower ? 0 : 1);
    }
}
