package org.baywright.render.sheet;

import org.locationtech.jts.geom.Envelope;

/** Paper kept round a view for what annotates it, mm. */
record Margins(double left, double right, double below, double above) {
    /** The room that is left of a cell. */
    Envelope within(Envelope cell) {
        return new Envelope(
                cell.getMinX() + left, cell.getMaxX() - right, cell.getMinY() + below, cell.getMaxY() - above);
    }
}
