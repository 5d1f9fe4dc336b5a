package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.geometry.Vec2;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Shift;
import org.baywright.render.mark.Stroke;
import org.baywright.render.paper.Pen;
import org.locationtech.jts.geom.Envelope;

/** Drawings beside and under each other, in their order, on as many sheets as they need. */
final class BlockFlow {
    /** Between two rows of drawings; a thin rule lies in the middle. */
    private static final double GAP = 6;

    private final Envelope room = SheetFrame.room();
    private final List<List<Mark>> sheets = new ArrayList<>();
    private final List<List<String>> names = new ArrayList<>();
    private List<Block> row = new ArrayList<>();
    private double top;

    BlockFlow(List<Block> blocks) {
        for (Block block : blocks) {
            double used = row.stream().mapToDouble(Block::width).sum();
            if (used + block.width() > room.getWidth() + 1e-6) {
                endRow();
            }
            row.add(block);
        }
        endRow();
    }

    private void endRow() {
        if (row.isEmpty()) {
            return;
        }
        double height = row.stream().mapToDouble(Block::height).max().orElseThrow();
        if (sheets.isEmpty() || top - height < room.getMinY()) {
            sheets.add(new ArrayList<>());
            names.add(new ArrayList<>());
            top = room.getMaxY();
        } else {
            rule(top + GAP / 2);
        }
        double x = room.getMinX();
        for (Block block : row) {
            marks().addAll(Shift.by(new Vec2(x, top), block.marks()));
            if (!block.name().isEmpty()) {
                names.get(names.size() - 1).add(block.name());
            }
            x += block.width();
        }
        top -= height + GAP;
        row = new ArrayList<>();
    }

    private void rule(double y) {
        marks().add(Stroke.line(new Vec2(room.getMinX(), y), new Vec2(room.getMaxX(), y), Pen.DIMENSION, Layer.FRAME));
    }

    private List<Mark> marks() {
        return sheets.get(sheets.size() - 1);
    }

    /** The sheets as drafts, numbered on from one after the letters of the series. */
    List<Draft> drafts(String series, String title) {
        List<Draft> drafts = new ArrayList<>();
        for (int i = 0; i < sheets.size(); i++) {
            List<String> on = names.get(i);
            String range = on.size() == 1 ? on.get(0) : on.get(0) + " to " + on.get(on.size() - 1);
            drafts.add(new Draft(series + (i + 1), title + " " + range, "as shown @ A3", sheets.get(i), List.of()));
        }
        return drafts;
    }

    /** The names of the drawings on each sheet. */
    List<List<String>> names() {
        return names.stream().map(List::copyOf).toList();
    }
}
