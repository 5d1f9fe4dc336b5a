package org.baywright.render.output;

import java.io.IOException;
import java.io.Writer;
import java.util.List;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.parts.Hole;
import org.baywright.model.parts.Part;

/**
 * Writes the face of a plate for profile cutting: its closed outline and its holes at full size, millimetres, the
 * plate's middle at zero. Depth runs right and width up, seen on the face that the plate's thickness grows to.
 *
 * <p>@source DXF reference for release 12, ASCII form (group codes from memory): HEADER, TABLES with its line type and
 * layers, ENTITIES with POLYLINE, VERTEX, SEQEND and CIRCLE. A slot is a closed POLYLINE whose ends are half circles: a
 * vertex's bulge (42) is the tangent of a quarter of the arc to the next one, 1 for a half circle. The release has no unit of its own, so a comment (999) says
 * it.
 */
public final class DxfWriter {
    /** Layer of the outer edge. */
    public static final String OUTLINE = "OUTLINE";

    /** Layer of the holes. */
    public static final String HOLES = "HOLES";

    private static final String VERSION = "AC1009";
    private static final String LINE = "\r\n";
    private static final int WHITE = 7;
    private static final int RED = 1;

    private final Writer out;

    private DxfWriter(Writer out) {
        this.out = out;
    }

    /** Writes one plate; the writer stays open. */
    public static void write(Part plate, Writer out) throws IOException {
        new DxfWriter(out).plate(plate);
    }

    private void plate(Part plate) throws IOException {
        group(
                999,
                plate.mark() + " " + plate.kind().label() + ", thickness "
                        + Numbers.plain(plate.solid().axisLength()) + " mm, " + plate.quantity() + " off");
        group(999, "All lengths in millimetres. Draft: not for cutting until certified by an engineer");
        header(plate.solid().profile().outline());
        tables();
        start("ENTITIES");
        outline(plate.solid().profile().outline());
        for (Hole hole : plate.holes()) {
            hole(hole);
        }
        group(0, "ENDSEC");
        group(0, "EOF");
    }

    private void header(List<Vec2> ring) throws IOException {
        start("HEADER");
        group(9, "$ACADVER");
        group(1, VERSION);
        group(9, "$EXTMIN");
        point(new Vec2(
                ring.stream().mapToDouble(Vec2::x).min().orElseThrow(),
                ring.stream().mapToDouble(Vec2::y).min().orElseThrow()));
        group(9, "$EXTMAX");
        point(new Vec2(
                ring.stream().mapToDouble(Vec2::x).max().orElseThrow(),
                ring.stream().mapToDouble(Vec2::y).max().orElseThrow()));
        group(0, "ENDSEC");
    }

    private void tables() throws IOException {
        start("TABLES");
        table("LTYPE", 1);
        group(0, "LTYPE");
        group(2, "CONTINUOUS");
        group(70, "0");
        group(3, "Solid line");
        group(72, "65");
        group(73, "0");
        group(40, "0");
        group(0, "ENDTAB");
        table("LAYER", 3);
        layer("0", WHITE);
        layer(OUTLINE, WHITE);
        layer(HOLES, RED);
        group(0, "ENDTAB");
        group(0, "ENDSEC");
    }

    private void table(String name, int entries) throws IOException {
        group(0, "TABLE");
        group(2, name);
        group(70, String.valueOf(entries));
    }

    private void layer(String name, int colour) throws IOException {
        group(0, "LAYER");
        group(2, name);
        group(70, "0");
        group(62, String.valueOf(colour));
        group(6, "CONTINUOUS");
    }

    private void outline(List<Vec2> ring) throws IOException {
        begin(OUTLINE);
        for (Vec2 corner : ring) {
            vertex(OUTLINE, corner);
        }
        end(OUTLINE);
    }

    private void begin(String layer) throws IOException {
        group(0, "POLYLINE");
        group(8, layer);
        group(66, "1");
        point(new Vec2(0, 0));
        group(70, "1");
    }

    private void vertex(String layer, Vec2 at) throws IOException {
        group(0, "VERTEX");
        group(8, layer);
        point(at);
    }

    private void end(String layer) throws IOException {
        group(0, "SEQEND");
        group(8, layer);
    }

    private void hole(Hole hole) throws IOException {
        if (hole.isSlot()) {
            slot(hole);
        } else {
            circle(hole);
        }
    }

    /** Counterclockwise: one side, half round the far end, the other side, half round the near end. */
    private void slot(Hole hole) throws IOException {
        Vec2 left = hole.run().unit().left().times(hole.diameter() / 2);
        Vec2 near = hole.ends().get(0);
        Vec2 far = hole.ends().get(1);
        begin(HOLES);
        vertex(HOLES, near.minus(left));
        vertex(HOLES, far.minus(left));
        group(42, "1");
        vertex(HOLES, far.plus(left));
        vertex(HOLES, near.plus(left));
        group(42, "1");
        end(HOLES);
    }

    private void circle(Hole hole) throws IOException {
        group(0, "CIRCLE");
        group(8, HOLES);
        point(hole.at());
        group(40, Numbers.plain(hole.diameter() / 2));
    }

    private void point(Vec2 at) throws IOException {
        group(10, Numbers.plain(at.x()));
        group(20, Numbers.plain(at.y()));
        group(30, "0");
    }

    private void start(String section) throws IOException {
        group(0, "SECTION");
        group(2, section);
    }

    private void group(int code, String value) throws IOException {
        out.write("%3d".formatted(code) + LINE + value + LINE);
    }
}
