package org.baywright.render.dimension;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Arc2D;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.baywright.model.geometry.Vec2;
import org.baywright.render.mark.Arc;
import org.baywright.render.mark.Bounds;
import org.baywright.render.mark.Fill;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Stroke;
import org.baywright.render.mark.Text;
import org.baywright.render.paper.Face;
import org.baywright.render.paper.Lettering;
import org.baywright.render.paper.Pen;

/** Draws marks as a bitmap for the eye, independent of the writers that go into the product. */
final class Picture {
    private static final double DOTS_PER_MM = 5;

    private final Graphics2D g;

    private Picture(Graphics2D g) {
        this.g = g;
    }

    /** Writes a picture of a sheet of this size into the build directory. */
    static void write(String name, double width, double height, List<? extends Mark> marks) throws IOException {
        BufferedImage image = new BufferedImage(
                (int) (width * DOTS_PER_MM), (int) (height * DOTS_PER_MM), BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, image.getWidth(), image.getHeight());
        g.scale(DOTS_PER_MM, -DOTS_PER_MM);
        g.translate(0, -height);
        Picture picture = new Picture(g);
        for (Mark mark : marks) {
            picture.draw(mark);
        }
        Path file = Path.of("target", "samples", name + ".png");
        Files.createDirectories(file.getParent());
        ImageIO.write(image, "png", file.toFile());
    }

    private void draw(Mark mark) throws IOException {
        if (mark instanceof Stroke s) {
            pen(s.pen());
            g.draw(path(s.points(), s.closed()));
        } else if (mark instanceof Arc a) {
            pen(a.pen());
            double r = a.radius();
            // Java measures angles clockwise once y runs up.
            g.draw(new Arc2D.Double(
                    a.centre().x() - r, a.centre().y() - r, 2 * r, 2 * r, -a.startDeg(), -a.sweepDeg(), Arc2D.OPEN));
        } else if (mark instanceof Fill f) {
            g.setColor(new Color((float) f.grey(), (float) f.grey(), (float) f.grey()));
            Path2D all = new Path2D.Double(Path2D.WIND_EVEN_ODD);
            f.rings().forEach(ring -> all.append(path(ring, true), false));
            g.fill(all);
        } else if (mark instanceof Text t) {
            text(t);
        }
    }

    private void pen(Pen pen) {
        g.setColor(Color.BLACK);
        float[] dashes = new float[pen.dashes().size()];
        for (int i = 0; i < dashes.length; i++) {
            dashes[i] = pen.dashes().get(i).floatValue();
        }
        g.setStroke(new BasicStroke(
                (float) pen.width(),
                BasicStroke.CAP_BUTT,
                BasicStroke.JOIN_MITER,
                10,
                dashes.length == 0 ? null : dashes,
                0));
    }

    private static Path2D path(List<Vec2> points, boolean closed) {
        Path2D path = new Path2D.Double();
        path.moveTo(points.get(0).x(), points.get(0).y());
        points.stream().skip(1).forEach(p -> path.lineTo(p.x(), p.y()));
        if (closed) {
            path.closePath();
        }
        return path;
    }

    private void text(Text t) throws IOException {
        AffineTransform before = g.getTransform();
        Vec2 start = Bounds.start(t);
        g.translate(start.x(), start.y());
        g.rotate(Math.toRadians(t.turnDeg()));
        g.scale(1, -1);
        g.setColor(Color.BLACK);
        g.setFont(font(t.face()).deriveFont((float) Lettering.fontSize(t.height(), t.face())));
        g.drawString(t.content(), 0, 0);
        g.setTransform(before);
    }

    private static Font font(Face face) throws IOException {
        try (InputStream in = Lettering.open(face)) {
            return Font.createFont(Font.TRUETYPE_FONT, in);
        } catch (java.awt.FontFormatException e) {
            throw new IOException(e);
        }
    }
}
