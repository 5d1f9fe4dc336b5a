package org.baywright.model.takeoff;

import java.util.List;
import org.baywright.model.catalogue.SheetProfile;
import org.baywright.model.cladding.Building;
import org.baywright.model.cladding.Surface;

/**
 * The screws of one surface, without spares.
 *
 * <p>@source corrugated sheet of 762 cover: five at ends and along the edges of the surface, three between, walls four:
 * common practice; the profile's own figures are in the catalogue. Side laps stitched at 600 to 900: common practice
 *
 * @param sheeting through sheets into rows
 * @param stitching through side laps
 */
record ScrewCount(int sheeting, int stitching) {
    /** Most between stitching screws along a side lap. Common practice, no source: 600 to 900. */
    private static final double STITCH = 600;

    /** Sheets whose edges are so close share a lap. */
    private static final double SAME_EDGE = 1;

    static ScrewCount of(Surface surface, Building building) {
        Supports supports = Supports.under(surface, building.shed());
        double first =
                surface.sheets().stream().mapToDouble(Surface.Sheet::left).min().orElse(0);
        double last = surface.sheets().stream()
                .mapToDouble(Surface.Sheet::right)
                .max()
                .orElse(0);
        int sheeting = surface.sheets().stream()
                .mapToInt(s -> {
                    boolean edge = s.left() < first + SAME_EDGE || s.right() > last - SAME_EDGE;
                    return screws(surface, supports.lines(s), edge);
                })
                .sum();
        return new ScrewCount(sheeting, stitching(surface.sheets()));
    }

    /** Screws in a sheet on so many rows. */
    static int screws(Surface surface, int rows, boolean edge) {
        SheetProfile.Screws screws = surface.profile().screws();
        if (surface.role() == Surface.Role.WALL) {
            return rows * screws.onWalls();
        }
        int ends = edge ? rows : Math.min(rows, 2);
        return ends * screws.atEnds() + (rows - ends) * screws.between();
    }

    private static int stitching(List<Surface.Sheet> sheets) {
        int count = 0;
        for (Surface.Sheet a : sheets) {
            for (Surface.Sheet b : sheets) {
                double lap = Math.min(a.high(), b.high()) - Math.max(a.low(), b.low());
                if (Math.abs(a.right() - b.left()) < SAME_EDGE && lap > 0) {
                    count += (int) Math.ceil(lap / STITCH - 1e-9);
                }
            }
        }
        return count;
    }
}
