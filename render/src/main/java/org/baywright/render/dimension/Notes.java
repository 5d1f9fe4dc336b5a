package org.baywright.render.dimension;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.baywright.model.geometry.Vec2;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Text;
import org.baywright.render.paper.Face;
import org.baywright.render.paper.Lettering;

/**
 * Paragraphs under each other in a column. Words after signs line up on one edge.
 *
 * @param width of the column, paper mm
 * @param textHeight of a capital, mm
 */
public record Notes(List<Paragraph> paragraphs, double width, double textHeight) {
    private static final double PARAGRAPH_GAP = 0.6;
    private static final double SIGN_GAP = 0.8;

    /** Copies the paragraphs. */
    public Notes {
        paragraphs = List.copyOf(paragraphs);
        if (!(width > 10 * textHeight) || !(textHeight > 0)) {
            throw new IllegalArgumentException("notes need a column wide enough to read");
        }
    }

    /** Notes in ordinary 2.5 mm text. */
    public static Notes of(List<Paragraph> paragraphs, double width) {
        return new Notes(paragraphs, width, Drafting.TEXT);
    }

    private double indent() {
        double widest = paragraphs.stream()
                .filter(p -> !p.sign().isEmpty())
                .mapToDouble(p -> Lettering.width(p.sign(), textHeight, p.face()) + SIGN_GAP * textHeight)
                .max()
                .orElse(0);
        return Math.min(widest, width / 2);
    }

    private double indent(Paragraph paragraph) {
        return paragraph.sign().isEmpty() ? 0 : indent();
    }

    private List<String> lines(Paragraph paragraph) {
        return WrappedText.lines(paragraph.words(), width - indent(paragraph), textHeight, paragraph.face());
    }

    private double height(Paragraph paragraph) {
        return (lines(paragraph).size() * Drafting.LINE_PITCH + PARAGRAPH_GAP) * textHeight;
    }

    /** Height on paper, mm. */
    public double height() {
        return paragraphs.stream().mapToDouble(this::height).sum();
    }

    /** The notes parted into columns that are no higher than the room, no paragraph parted. */
    public List<Notes> columns(double roomHeight) {
        return columns(roomHeight, heights());
    }

    /**
     * The notes in columns of the least height at which there are no more of them, in whole millimetres over an even share
     * or the highest paragraph.
     */
    public Columns inColumns(int most) {
        double[] heights = heights();
        double highest = Arrays.stream(heights).max().orElse(0);
        double height = Math.max(highest, Arrays.stream(heights).sum() / most);
        while (columns(height, heights).size() > most) {
            height += 1;
        }
        return new Columns(height, columns(height, heights));
    }

    /**
     * Notes parted into columns.
     *
     * @param height that none is higher than
     * @param notes from left to right
     */
    public record Columns(double height, List<Notes> notes) {}

    private double[] heights() {
        return paragraphs.stream().mapToDouble(this::height).toArray();
    }

    private List<Notes> columns(double roomHeight, double[] heights) {
        List<Notes> columns = new ArrayList<>();
        List<Paragraph> column = new ArrayList<>();
        double used = 0;
        for (int i = 0; i < paragraphs.size(); i++) {
            Paragraph paragraph = paragraphs.get(i);
            // A heading goes over together with what it stands on.
            boolean heads = paragraph.face() == Face.BOLD && i + 1 < paragraphs.size();
            double next = heads ? heights[i + 1] : 0;
            if (!column.isEmpty() && used + heights[i] + next > roomHeight) {
                columns.add(new Notes(column, width, textHeight));
                column = new ArrayList<>();
                used = 0;
            }
            column.add(paragraph);
            used += heights[i];
        }
        columns.add(new Notes(column, width, textHeight));
        return columns;
    }

    /** Draws with the upper left corner at a point. */
    public List<Mark> draw(Vec2 topLeft) {
        List<Mark> marks = new ArrayList<>();
        Vec2 top = topLeft;
        for (Paragraph paragraph : paragraphs) {
            double y = top.y() - Lettering.ascent(textHeight, paragraph.face());
            if (!paragraph.sign().isEmpty()) {
                marks.add(text(paragraph.sign(), new Vec2(top.x(), y), paragraph.face()));
            }
            for (String line : lines(paragraph)) {
                marks.add(text(line, new Vec2(top.x() + indent(paragraph), y), paragraph.face()));
                y -= Drafting.LINE_PITCH * textHeight;
            }
            top = top.minus(new Vec2(0, height(paragraph)));
        }
        return marks;
    }

    private Text text(String line, Vec2 at, Face face) {
        return new Text(line, at, textHeight, Text.Align.LEFT, 0, face, Layer.LABEL, "");
    }
}
