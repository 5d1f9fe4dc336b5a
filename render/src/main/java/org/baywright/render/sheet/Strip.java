package org.baywright.render.sheet;

import org.locationtech.jts.geom.Envelope;

/**
 * A run of bays that is drawn by itself because the whole building would be too small to read.
 *
 * @param firstFrame at its left end
 * @param lastFrame at its right end
 * @param sheet which of the sheets it stands on, from 0
 * @param cell its room on that sheet
 */
record Strip(int firstFrame, int lastFrame, int sheet, Envelope cell) {
    /** Whether a frame is in it, its ends included. */
    boolean has(int frame) {
        return frame >= firstFrame && frame <= lastFrame;
    }
    /** The same frames in another cell. */
    Strip in(Envelope other) {
        return new Strip(firstFrame, lastFrame, sheet, other);
    }
}
