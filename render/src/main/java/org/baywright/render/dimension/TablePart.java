package org.baywright.render.dimension;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.baywright.model.geometry.Vec2;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Stroke;
import org.baywright.render.mark.Text;
import org.baywright.render.paper.Pen;

/** As much of a table as one place on a sheet holds, its header on top. */
public final class TablePart {
    private final List<Column> columns;
    private final double[] widths;
    private final SetRow header;
    private final List<SetRow> rows;

    TablePart(List<Column> columns, double[] widths, SetRow header, List<SetRow> rows) {
        this.columns = columns;
        this.widths = widths.clone();
        this.header = header;
        this.rows = List.copyOf(rows);
    }

    /** Width on paper, mm. */
    public double width() {
        return Arrays.stream(widths).sum();
    }

    /** Height on paper, mm. */
    public double height() {
        return header.height() + rows.stream().mapToDouble(SetRow::height).sum();
    }

    /** Draws with the upper left corner at a point. */
    public List<Mark> draw(Vec2 topLeft) {
        List<Mark> marks = new ArrayList<>();
        marks.add(rule(topLeft, Pen.VISIBLE));
        Vec2 top = row(header, topLeft, marks);
        marks.add(rule(top, Pen.VISIBLE));
        for (int i = 0; i < rows.size(); i++) {
            SetRow row = rows.get(i);
            if (row.kind() == Row.Kind.TOTAL && i > 0) {
                marks.add(rule(top, Pen.VISIBLE));
            }
            top = row(row, top, marks);
            boolean last = i == rows.size() - 1;
            marks.add(rule(top, last ? Pen.VISIBLE : Pen.DIMENSION));
        }
        return marks;
    }

    private Mark rule(Vec2 left, Pen pen) {
        return Stroke.line(left, left.plus(new Vec2(width(), 0)), pen, Layer.TABLE);
    }

    /** Draws a row and returns the left end of the rule below it. */
    private Vec2 row(SetRow row, Vec2 top, List<Mark> marks) {
        double x = top.x();
        for (int i = 0; i < row.cells().size(); i++) {
            boolean flushLeft = row.kind() == Row.Kind.HEADING || columns.get(i).breaks();
            double at = flushLeft ? x + Table.PAD : x + widths[i] - Table.PAD;
            cell(row, i, new Vec2(at, top.y()), flushLeft ? Text.Align.LEFT : Text.Align.RIGHT, marks);
            x += widths[i];
        }
        return top.minus(new Vec2(0, row.height()));
    }

    private static void cell(SetRow row, int i, Vec2 top, Text.Align align, List<Mark> marks) {
        double y = top.y() - row.lead() - Drafting.ascent();
        for (String line : row.cells().get(i)) {
            marks.add(new Text(line, new Vec2(top.x(), y), Table.TEXT, align, 0, row.face(), Layer.TABLE, ""));
            y -= Drafting.LINE_PITCH * Table.TEXT;
        }
    }
}
