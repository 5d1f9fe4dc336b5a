package org.baywright.render.paper;

import java.util.List;

/**
 * A drawing scale 1:n.
 *
 * @param n millimetres of building to one millimetre of paper
 */
public record Scale(int n) {
    /**
     * The preferred reduction scales, largest first, with full size in front.
     *
     * <p>@source ISO 5455:1979 clause 5.1
     */
    public static final List<Scale> PREFERRED = List.of(
            new Scale(1),
            new Scale(2),
            new Scale(5),
            new Scale(10),
            new Scale(20),
            new Scale(50),
            new Scale(100),
            new Scale(200),
            new Scale(500),
            new Scale(1000),
            new Scale(2000),
            new Scale(5000),
            new Scale(10000));

    /** The largest preferred scale at which a view fits the room, both in millimetres. */
    public static Scale fitting(double viewWidth, double viewHeight, double roomWidth, double roomHeight) {
        return PREFERRED.stream()
                .filter(s -> s.toPaper(viewWidth) <= roomWidth && s.toPaper(viewHeight) <= roomHeight)
                .findFirst()
                .orElse(PREFERRED.get(PREFERRED.size() - 1));
    }

    /** Paper millimetres of a length in the building. */
    public double toPaper(double buildingMm) {
        return buildingMm / n;
    }

    /** As the title block prints it. */
    @Override
    public String toString() {
        return "1:" + n;
    }
}
