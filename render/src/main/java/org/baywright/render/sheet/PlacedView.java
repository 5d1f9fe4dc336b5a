package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.baywright.model.geometry.Vec2;
import org.baywright.render.dimension.Annotations;
import org.baywright.render.dimension.LabelField;
import org.baywright.render.dimension.ScaleBar;
import org.baywright.render.dimension.TurnedBox;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Stroke;
import org.baywright.render.mark.Text;
import org.baywright.render.paper.Face;
import org.baywright.render.paper.Lettering;
import org.baywright.render.paper.Pen;
import org.baywright.render.paper.Scale;
import org.baywright.render.view.ViewLine;
import org.baywright.render.view.ViewPort;
import org.locationtech.jts.geom.Envelope;

/**
 * One view in its cell of a sheet: the view in the middle, its title, scale and bar along the foot of the cell, and
 * what annotates it round about.
 */
final class PlacedView {
    /** Along the foot of a cell, for title and bar. */
    static final double FOOT = 13;

    private static final double TITLE = 3.5;

    /** Where title and bar would else not stand side by side in the cell. */
    private static final double SMALL_TITLE = 2.5;

    /** Half the last figure of a bar, which stands over its end. */
    private static final double FIGURE = 6;

    /** Width of paper along a border that words keep off. */
    private static final double BORDER = 1;

    private static final String SIZE = " @ A3";
    private static final double BAR = 50;
    private static final double LEAST_BAR = 20;

    /** Before the bar, and after it for the last figure. */
    private static final double BAR_GAP = 12;

    private final LabelField field;
    private final ViewPort port;
    private final Envelope box;
    private final Annotations annotations;
    private final List<Mark> marks = new ArrayList<>();
    private final double footEnd;

    /** A view at the largest preferred scale that fits its cell. */
    PlacedView(LabelField field, String title, Envelope cell, Envelope bounds, Margins margins) {
        this(field, title, cell, bounds, margins, fitting(cell, bounds, margins));
    }

    /** A view at a given scale. */
    PlacedView(LabelField field, String title, Envelope cell, Envelope bounds, Margins margins, Scale scale) {
        this.field = field;
        this.port = ViewPort.centred(bounds, room(cell, margins), scale);
        Vec2 low = port.toPaper(new Vec2(bounds.getMinX(), bounds.getMinY()));
        Vec2 high = port.toPaper(new Vec2(bounds.getMaxX(), bounds.getMaxY()));
        this.box = new Envelope(low.x(), high.x(), low.y(), high.y());
        this.annotations = new Annotations(field, port, box);
        this.footEnd = foot(title, cell);
    }

    /** The largest preferred scale at which a view fits its cell. */
    static Scale fitting(Envelope cell, Envelope bounds, Margins margins) {
        Envelope room = room(cell, margins);
        return Scale.fitting(bounds.getWidth(), bounds.getHeight(), room.getWidth(), room.getHeight());
    }

    private static Envelope room(Envelope cell, Margins margins) {
        Envelope room = margins.within(cell);
        return new Envelope(room.getMinX(), room.getMaxX(), room.getMinY() + FOOT, room.getMaxY());
    }

    /** Draws the title, and the bar where there is room for it, and says where they end. */
    private double foot(String title, Envelope cell) {
        double x = cell.getMinX() + 2;
        double y = cell.getMinY() + 3;
        String plain = title + "   " + port.scale();
        boolean roomy = width(plain + SIZE, TITLE) + BAR_GAP + BAR < cell.getWidth();
        String words = roomy ? plain + SIZE : plain;
        double height = width(words, TITLE) + BAR_GAP + LEAST_BAR + FIGURE < cell.getWidth() ? TITLE : SMALL_TITLE;
        Text text = new Text(words, new Vec2(x, y), height, Text.Align.LEFT, 0, Face.BOLD, Layer.LABEL, "");
        double end = x + width(words, height);
        Vec2 under = new Vec2(0, -1.6);
        draw(List.of(text, Stroke.line(text.at().plus(under), new Vec2(end, y).plus(under), Pen.VISIBLE, Layer.LABEL)));
        double footEnd = end + BAR_GAP + LEAST_BAR <= cell.getMaxX() ? bar(end, cell) : end;
        field.obstacle(new Envelope(x, footEnd + FIGURE, cell.getMinY(), cell.getMinY() + FOOT));
        return footEnd;
    }

    /** Draws the bar after a title, no longer than a narrow cell has room for; its figure stands half over its end. */
    private double bar(double titleEnd, Envelope cell) {
        ScaleBar bar = new ScaleBar(port.scale(), Math.min(BAR, cell.getMaxX() - titleEnd - BAR_GAP));
        draw(bar.draw(new Vec2(titleEnd + BAR_GAP - 4, cell.getMinY() + 1.8)));
        return titleEnd + BAR_GAP - 4 + bar.length();
    }

    /** How far to the right title and bar reach along the foot of the cell. */
    double footEnd() {
        return footEnd;
    }

    private static double width(String words, double height) {
        return Lettering.width(words, height, Face.BOLD);
    }

    /** Marks that are already placed on paper; labels keep off them. */
    void draw(Collection<? extends Mark> more) {
        marks.addAll(more);
        field.drawn(more);
    }

    /** Draws a thin border round the view, which no words may cross. */
    void border() {
        draw(List.of(SheetFrame.box(box, Pen.DIMENSION)));
        double t = BORDER / 2;
        double x0 = box.getMinX();
        double x1 = box.getMaxX();
        double y0 = box.getMinY();
        double y1 = box.getMaxY();
        field.obstacle(new Envelope(x0 - t, x0 + t, y0, y1));
        field.obstacle(new Envelope(x1 - t, x1 + t, y0, y1));
        field.obstacle(new Envelope(x0, x1, y0 - t, y0 + t));
        field.obstacle(new Envelope(x0, x1, y1 - t, y1 + t));
    }

    /** Lines of the view. */
    void draw(List<ViewLine> lines, Pen pen, Layer layer) {
        draw(ViewPort.strokes(lines, port, pen, layer));
    }

    /** A straight line of the view. */
    void line(Vec2 from, Vec2 to, Pen pen, Layer layer) {
        draw(List.of(Stroke.line(port.toPaper(from), port.toPaper(to), pen, layer)));
    }

    /** Paper that no label may take. */
    void keepClear(Envelope paper) {
        field.obstacle(paper);
    }

    /** Whether nothing is written on some paper, and it may be written on. */
    boolean isFree(Envelope paper) {
        return field.free(TurnedBox.of(paper));
    }

    /** How many lines that are drawn run through some paper. */
    int linesThrough(Envelope paper) {
        return field.linesThrough(TurnedBox.of(paper));
    }

    ViewPort port() {
        return port;
    }

    /** The paper that the view takes. */
    Envelope box() {
        return box;
    }

    Annotations annotate() {
        return annotations;
    }

    /** The view and all about it. */
    List<Mark> marks() {
        List<Mark> all = new ArrayList<>(marks);
        all.addAll(annotations.marks());
        return all;
    }
}
