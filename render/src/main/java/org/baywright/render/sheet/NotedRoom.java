package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.baywright.model.geometry.Vec2;
import org.baywright.render.dimension.Notes;
import org.baywright.render.dimension.Paragraph;
import org.baywright.render.mark.Mark;
import org.locationtech.jts.geom.Envelope;

/**
 * A sheet's room parted between views and notes: notes stand in a column on the right, in a narrower one or in columns
 * along the foot when that leaves the views larger.
 *
 * @param strips of the views, in what the notes leave
 * @param notes placed
 */
record NotedRoom(Strips strips, List<Mark> notes) {
    private static final double COLUMN = 78;
    private static final double NARROW_COLUMN = 58;
    private static final double GAP = 6;
    private static final int FOOT_COLUMNS = 3;

    /** Copies the list. */
    NotedRoom {
        notes = List.copyOf(notes);
    }

    /** The best of the ways. */
    static NotedRoom of(List<Paragraph> words, Function<Envelope, Strips> layout) {
        return Stream.of(
                        column(words, COLUMN, layout),
                        Optional.of(foot(words, layout)),
                        column(words, NARROW_COLUMN, layout))
                .flatMap(Optional::stream)
                .reduce((best, next) -> next.strips.betterThan(best.strips) ? next : best)
                .orElseThrow();
    }

    /** Notes in a column of a width, when they are no higher than the sheet has room. */
    private static Optional<NotedRoom> column(List<Paragraph> words, double width, Function<Envelope, Strips> layout) {
        Envelope room = SheetFrame.room();
        Notes notes = Notes.of(words, width);
        if (notes.height() + GAP > room.getHeight()) {
            return Optional.empty();
        }
        double x = room.getMaxX() - width;
        Envelope left = new Envelope(room.getMinX(), x - GAP, room.getMinY(), room.getMaxY());
        return Optional.of(new NotedRoom(layout.apply(left), notes.draw(new Vec2(x, room.getMaxY() - GAP))));
    }

    private static NotedRoom foot(List<Paragraph> words, Function<Envelope, Strips> layout) {
        Envelope room = SheetFrame.room();
        double step = room.getWidth() / FOOT_COLUMNS;
        Notes.Columns parted = Notes.of(words, step - GAP).inColumns(FOOT_COLUMNS);
        double top = room.getMinY() + parted.height();
        List<Mark> marks = new ArrayList<>();
        List<Notes> columns = parted.notes();
        for (int i = 0; i < columns.size(); i++) {
            marks.addAll(columns.get(i).draw(new Vec2(room.getMinX() + 2 + i * step, top)));
        }
        Envelope above = new Envelope(room.getMinX(), room.getMaxX(), top + 2, room.getMaxY());
        return new NotedRoom(layout.apply(above), marks);
    }
}
