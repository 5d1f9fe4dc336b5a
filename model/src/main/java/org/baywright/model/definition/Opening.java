package org.baywright.model.definition;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * A door, a window, or a place left open. Sizes are clear, between jambs and under the header.
 *
 * @param type what closes it
 * @param wall the wall it is in
 * @param leanTo the lean-to whose wall it is in, on that side; empty for a wall of the main building
 * @param bay of a side wall, from 1; empty in an end wall
 * @param size clear width and height and the sill's height above the floor; empty for a whole bay left open
 * @param offset from the bay's lower frame line, or in an end wall from the left line of that wall on plan, to the
 *     opening; in the middle when empty
 */
public record Opening(
        Type type, Wall wall, Optional<Side> leanTo, OptionalInt bay, Optional<Size> size, OptionalDouble offset) {
    /** What closes an opening. */
    public enum Type {
        ROLLER_DOOR("roller door"),
        SLIDING_DOOR("sliding door"),
        DOOR("door"),
        WINDOW("window"),
        OPEN("open");

        private final String label;

        Type(String label) {
            this.label = label;
        }

        /** The trade's words. */
        public String label() {
            return label;
        }
    }

    /** Clear size. */
    public record Size(double width, double height, double sill) {}
}
