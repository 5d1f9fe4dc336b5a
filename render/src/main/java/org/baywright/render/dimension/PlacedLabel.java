package org.baywright.render.dimension;

import java.util.ArrayList;
import java.util.List;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Text;

/**
 * A label that has found its place.
 *
 * @param texts one a line
 * @param leader the leader and its end, empty when the words stand beside what they name
 * @param box the paper the words take
 */
public record PlacedLabel(List<Text> texts, List<Mark> leader, TurnedBox box) {
    /** Copies the lists. */
    public PlacedLabel {
        texts = List.copyOf(texts);
        leader = List.copyOf(leader);
    }

    /** Leader and words, without any white behind them. */
    public List<Mark> marks() {
        List<Mark> marks = new ArrayList<>(leader);
        marks.addAll(texts);
        return marks;
    }
}
