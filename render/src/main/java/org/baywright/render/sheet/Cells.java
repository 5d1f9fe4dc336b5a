package org.baywright.render.sheet;

import org.locationtech.jts.geom.Envelope;

/** A room on paper parted into equal cells. */
final class Cells {
    private Cells() {}

    /** Cell i of n from the left. */
    static Envelope column(Envelope room, int i, int n) {
        double width = room.getWidth() / n;
        double x = room.getMinX() + i * width;
        return new Envelope(x, x + width, room.getMinY(), room.getMaxY());
    }

    /** Cell i of n from the top. */
    static Envelope row(Envelope room, int i, int n) {
        double height = room.getHeight() / n;
        double y = room.getMaxY() - i * height;
        return new Envelope(room.getMinX(), room.getMaxX(), y - height, y);
    }

    /** The room from one share of its width to another. */
    static Envelope across(Envelope room, double from, double to) {
        return new Envelope(
                room.getMinX() + from * room.getWidth(),
                room.getMinX() + to * room.getWidth(),
                room.getMinY(),
                room.getMaxY());
    }

    /** The room from one share of its height to another, from the foot. */
    static Envelope up(Envelope room, double from, double to) {
        return new Envelope(
                room.getMinX(),
                room.getMaxX(),
                room.getMinY() + from * room.getHeight(),
                room.getMinY() + to * room.getHeight());
    }
}
