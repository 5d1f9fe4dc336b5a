package org.baywright.render.dimension;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.baywright.model.geometry.Vec2;
import org.baywright.render.mark.Arc;
import org.baywright.render.mark.Bounds;
import org.baywright.render.mark.Fill;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Stroke;
import org.baywright.render.mark.Text;
import org.locationtech.jts.geom.Envelope;

/**
 * Keeps the account of one sheet: what paper is taken, and by what. Text never lies on text or on an obstacle, nor
 * leaves the frame; it may lie on lines, but seeks to cross few. The same calls in the same order give the same sheet.
 */
public final class LabelField {
    /** Room kept between the frame line and any text. */
    private static final double INSIDE_FRAME = 1;

    /** Lines stop this far before and after text that lies on them; a dash must not read as a minus. */
    private static final double CLEAR_OF_LINES = 1;

    private final Envelope frame;
    private final Taken words = new Taken();
    private final Taken obstacles = new Taken();
    private final Taken lines = new Taken();
    private final Taken leaders = new Taken();
    private final Taken targets = new Taken();

    /** An empty sheet inside a frame, paper mm. */
    public LabelField(Envelope frame) {
        this.frame = new Envelope(frame);
        this.frame.expandBy(-INSIDE_FRAME);
    }

    /** Paper that no text may take, such as a title block. */
    public void obstacle(Envelope box) {
        obstacles.add(TurnedBox.of(box));
    }

    /** Paper that no text may take. */
    public void obstacle(TurnedBox box) {
        obstacles.add(box);
    }

    /** Paper that text has taken. */
    public void words(TurnedBox box) {
        words.add(box);
    }

    /** Marks that are on the sheet: text is kept off by others, lines are crossed as little as can be. */
    public void drawn(Collection<? extends Mark> marks) {
        marks.forEach(this::drawn);
    }

    private void drawn(Mark mark) {
        if (mark instanceof Text text) {
            words.add(TurnedBox.of(text));
        } else if (mark instanceof Stroke stroke) {
            path(stroke.points(), stroke.closed());
        } else if (mark instanceof Fill fill) {
            fill.rings().forEach(ring -> path(ring, true));
        } else if (mark instanceof Arc arc) {
            lines.add(TurnedBox.of(Bounds.of(arc)));
        }
    }

    private void path(List<Vec2> points, boolean closed) {
        for (int i = 1; i < points.size(); i++) {
            lines.add(TurnedBox.line(points.get(i - 1), points.get(i)));
        }
        if (closed) {
            lines.add(TurnedBox.line(points.get(points.size() - 1), points.get(0)));
        }
    }

    /** True when text may stand there. */
    public boolean free(TurnedBox box) {
        return inFrame(box) && !words.any(box) && !obstacles.any(box);
    }

    /** True when the box lies wholly inside the frame. */
    public boolean inFrame(TurnedBox box) {
        return frame.covers(box.envelope());
    }

    /** True when text is there already. */
    boolean onWords(TurnedBox box) {
        return words.any(box);
    }

    /** True when lines that are drawn run through a box. */
    public boolean onLines(TurnedBox box) {
        return lines.any(box) || leaders.any(box);
    }

    /** How many lines run through a box. */
    public int linesThrough(TurnedBox box) {
        return lines.count(box) + leaders.count(box);
    }

    /** A point that some label names, not to be covered by another label. */
    private void target(Vec2 point) {
        targets.add(TurnedBox.upright(point.x() - 0.8, point.y() - 0.8, point.x() + 0.8, point.y() + 0.8));
    }

    Envelope frame() {
        return new Envelope(frame);
    }

    /** What words at this spot would spoil. */
    double harm(TurnedBox box) {
        return 12 * lines.count(box) + 25 * leaders.count(box) + 40 * targets.count(box);
    }

    /** What a leader would spoil: lines crossed a little; leaders, words, bubbles and borders a lot. */
    double leaderHarm(TurnedBox leader) {
        return 0.5 * lines.count(leader)
                + 12 * leaders.count(leader)
                + 25 * targets.count(leader)
                + 60 * words.count(leader)
                + 30 * obstacles.count(leader);
    }

    /**
     * Finds room for labels, each near what it names or else on a leader further off, and takes that paper. Given
     * together they also keep off the points that the others name.
     *
     * @throws IllegalStateException when no free paper of a label's size is left on the sheet
     */
    public List<PlacedLabel> place(List<Label> labels) {
        labels.forEach(label -> target(label.target()));
        return labels.stream().map(this::placeOne).toList();
    }

    /** Finds room for a single label. */
    public PlacedLabel place(Label label) {
        return place(List.of(label)).get(0);
    }

    private PlacedLabel placeOne(Label label) {
        PlacedLabel placed = new LabelSearch(this, label).best();
        words.add(placed.box());
        for (Mark mark : placed.leader()) {
            if (mark instanceof Stroke stroke) {
                leader(stroke);
            }
        }
        return placed;
    }

    private void leader(Stroke stroke) {
        for (int i = 1; i < stroke.points().size(); i++) {
            leaders.add(
                    TurnedBox.line(stroke.points().get(i - 1), stroke.points().get(i)));
        }
    }

    /** Takes the paper under the texts and notes the lines. */
    void take(Ink ink) {
        drawn(ink.lines());
        drawn(ink.texts());
    }

    /** The marks in drawing order: lines, then white where text lies on them, then the text. */
    List<Mark> drawing(List<Mark> lines, List<Text> texts) {
        List<Mark> marks = new ArrayList<>(lines);
        for (Text text : texts) {
            TurnedBox box = TurnedBox.of(text);
            if (onLines(box)) {
                marks.add(new Fill(List.of(box.longer(CLEAR_OF_LINES).corners()), 1, Layer.LABEL, ""));
            }
        }
        marks.addAll(texts);
        return marks;
    }
}
