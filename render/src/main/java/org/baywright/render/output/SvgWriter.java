package org.baywright.render.output;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.baywright.model.geometry.Vec2;
import org.baywright.render.mark.Arc;
import org.baywright.render.mark.Fill;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Stroke;
import org.baywright.render.mark.Text;
import org.baywright.render.paper.Face;
import org.baywright.render.paper.Lettering;
import org.baywright.render.paper.Pen;
import org.baywright.render.sheet.Sheet;

/**
 * Writes one sheet as SVG at true size, one unit to the millimetre. Marks of one layer and look that follow each other
 * share a group, and each mark names its part in {@code data-part}.
 *
 * <p>@source W3C SVG 1.1
 */
public final class SvgWriter {
    /** Some programs know the face by its own name, some as the narrow one of its family; some trip over blanks here. */
    private static final String FAMILIES = "'" + Lettering.FAMILY + "','DejaVu Sans',sans-serif";

    private final double paperHeight;
    private final Numbers out = new Numbers();
    private String group = "";

    private SvgWriter(double paperHeight) {
        this.paperHeight = paperHeight;
    }

    /** Writes a whole SVG document, to be stored as UTF-8. */
    public static void write(Sheet sheet, Appendable out) throws IOException {
        SvgWriter writer = new SvgWriter(sheet.paper().height());
        writer.open(sheet);
        sheet.marks().forEach(writer::draw);
        out.append(writer.closed());
    }

    private void open(Sheet sheet) {
        String width = Numbers.plain(sheet.paper().width());
        String height = Numbers.plain(sheet.paper().height());
        out.put("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\"");
        attribute("width", width + "mm");
        attribute("height", height + "mm");
        attribute("viewBox", "0 0 " + width + " " + height);
        attribute("fill", "none");
        attribute("stroke-linejoin", "round");
        attribute("font-family", FAMILIES);
        attribute("font-stretch", "condensed");
        attribute("xml:space", "preserve");
        out.put(">\n<title>" + escaped(sheet.number() + " " + sheet.title()) + "</title>\n");
        out.put("<rect width=\"100%\" height=\"100%\" fill=\"#fff\"/>\n");
    }

    private String closed() {
        return out + (group.isEmpty() ? "" : "</g>\n") + "</svg>\n";
    }

    private void draw(Mark mark) {
        enter(groupOf(mark));
        if (mark instanceof Stroke stroke) {
            path(lines(stroke.points(), stroke.closed()), stroke);
        } else if (mark instanceof Arc arc) {
            arc(arc);
        } else if (mark instanceof Fill fill) {
            path(fill.rings().stream().map(ring -> lines(ring, true)).collect(Collectors.joining()), fill);
        } else {
            text((Text) mark);
        }
    }

    private void enter(String next) {
        if (!next.equals(group)) {
            out.put(group.isEmpty() ? "" : "</g>\n").put(next).put("\n");
            group = next;
        }
    }

    private static String groupOf(Mark mark) {
        String layer = "<g class=\"" + mark.layer().name().toLowerCase(Locale.ROOT);
        if (mark instanceof Stroke stroke) {
            return layer + look(stroke.pen());
        }
        if (mark instanceof Arc arc) {
            return layer + look(arc.pen());
        }
        if (mark instanceof Fill fill) {
            return layer + " fill\" fill-rule=\"evenodd\" fill=\"" + tone(fill.grey()) + "\">";
        }
        return layer + " text\" fill=\"#000\">";
    }

    /** Full lines end round, dashes square, as in the PDF. */
    private static String look(Pen pen) {
        String dashes = pen.dashes().stream().map(Numbers::plain).collect(Collectors.joining(" "));
        return " " + pen.name().toLowerCase(Locale.ROOT) + "\" stroke=\"" + tone(pen.grey()) + "\" stroke-width=\""
                + Numbers.plain(pen.width()) + "\""
                + (dashes.isEmpty() ? " stroke-linecap=\"round\"" : " stroke-dasharray=\"" + dashes + "\"") + ">";
    }

    private static String tone(double grey) {
        long level = Math.round(grey * 255);
        return String.format(Locale.ROOT, "#%02x%02x%02x", level, level, level);
    }

    private String lines(List<Vec2> points, boolean closed) {
        String corners = points.stream().map(this::position).collect(Collectors.joining("L", "M", ""));
        return corners + (closed ? "Z" : "");
    }

    private void arc(Arc arc) {
        if (arc.sweepDeg() == 360) {
            Vec2 centre = flipped(arc.centre());
            out.put("<circle");
            number("cx", centre.x());
            number("cy", centre.y());
            number("r", arc.radius());
            end(arc);
            return;
        }
        String radius = Numbers.plain(arc.radius());
        String way = arc.sweepDeg() > 180 ? " 0 1 0 " : " 0 0 0 ";
        String from = position(arc.at(arc.startDeg()));
        String to = position(arc.at(arc.startDeg() + arc.sweepDeg()));
        path("M" + from + "A" + radius + " " + radius + way + to, arc);
    }

    private void path(String course, Mark mark) {
        out.put("<path");
        attribute("d", course);
        end(mark);
    }

    /** The length is stated, so that a browser without the typeface still fills the same room. */
    private void text(Text text) {
        String printable = Lettering.printable(text.content(), text.face());
        if (printable.isBlank()) {
            return;
        }
        Vec2 at = flipped(text.at());
        out.put("<text");
        number("x", at.x());
        number("y", at.y());
        number("font-size", Lettering.fontSize(text.height(), text.face()));
        if (text.face() == Face.BOLD) {
            attribute("font-weight", "bold");
        }
        if (text.align() != Text.Align.LEFT) {
            attribute("text-anchor", text.align() == Text.Align.CENTRE ? "middle" : "end");
        }
        number("textLength", Lettering.width(text.content(), text.height(), text.face()));
        attribute("lengthAdjust", "spacingAndGlyphs");
        if (text.turnDeg() != 0) {
            attribute("transform", "rotate(" + Numbers.plain(-text.turnDeg()) + " " + position(text.at()) + ")");
        }
        part(text);
        out.put(">").put(escaped(printable)).put("</text>\n");
    }

    private void end(Mark mark) {
        part(mark);
        out.put("/>\n");
    }

    private void part(Mark mark) {
        if (!mark.part().isEmpty()) {
            attribute("data-part", mark.part());
        }
    }

    private void number(String name, double value) {
        attribute(name, Numbers.plain(value));
    }

    private void attribute(String name, String value) {
        out.put(" ").put(name).put("=\"").put(escaped(value)).put("\"");
    }

    private String position(Vec2 point) {
        Vec2 flipped = flipped(point);
        return Numbers.plain(flipped.x()) + " " + Numbers.plain(flipped.y());
    }

    /** SVG counts down from the top. */
    private Vec2 flipped(Vec2 point) {
        return new Vec2(point.x(), paperHeight - point.y());
    }

    /** Text fit for XML 1.0: marked-up characters spelt out, those that XML forbids left out. */
    private static String escaped(String text) {
        StringBuilder safe = new StringBuilder();
        text.codePoints().filter(SvgWriter::allowed).forEach(c -> {
            switch (c) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                default -> safe.appendCodePoint(c);
            }
        });
        return safe.toString();
    }

    private static boolean allowed(int c) {
        return !Character.isISOControl(c) && Character.getType(c) != Character.SURROGATE && c != 0xFFFE && c != 0xFFFF;
    }
}
