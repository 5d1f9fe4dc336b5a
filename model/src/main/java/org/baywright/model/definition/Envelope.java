package org.baywright.model.definition;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.baywright.model.catalogue.Catalogue;
import org.baywright.model.catalogue.Section;
import org.baywright.model.catalogue.SheetProfile;

/**
 * All that goes on the frame.
 *
 * @param extent whether anything goes on it
 * @param purlins roof rows
 * @param walls wall rows and uprights
 * @param bracing roof and wall bracing
 * @param sheeting sheets
 * @param roofWater gutters and downpipes
 * @param openings doors, windows and open bays
 * @param liftingBeam a beam for a hoist
 */
public record Envelope(
        Extent extent,
        Purlins purlins,
        WallFrame walls,
        Bracing bracing,
        Sheeting sheeting,
        RoofWater roofWater,
        List<Opening> openings,
        Optional<LiftingBeam> liftingBeam) {
    /** How much of it there is. */
    public enum Extent {
        FULL,
        NONE
    }

    /** Rows and uprights of the walls. */
    public record WallFrame(Girts girts, Mullions mullions) {}

    /** Copies the list. */
    public Envelope {
        openings = List.copyOf(openings);
    }

    /** Whether the shed has an envelope at all. */
    public boolean isFull() {
        return extent == Extent.FULL;
    }

    /** An envelope in which everything is as usual. */
    static Envelope usual(Extent extent, Catalogue catalogue) {
        SheetProfile sheet = catalogue.sheets().get(0);
        return new Envelope(
                extent,
                new Purlins(member(catalogue, "Z150-15"), 1200, 900, 150, 75, 0.15, OptionalInt.empty()),
                new WallFrame(
                        new Girts(member(catalogue, "C100-12"), 1500, 150, false),
                        new Mullions(member(catalogue, "SHS 100x100x4"), 4000, 25)),
                new Bracing(section(catalogue, "ROD 16"), List.of(1), section(catalogue, "EA 50x50x5"), 0),
                new Sheeting(
                        new Sheeting.Roof(sheet, "", 50, 25, 0, false),
                        new Sheeting.Walls(sheet, "", 50, false),
                        12000,
                        false,
                        false),
                new RoofWater(
                        150,
                        new RoofWater.Gutter("box gutter 125x100", 100, 125, 11000),
                        500,
                        new RoofWater.Downpipe("downpipe 100x75", 7500)),
                List.of(),
                Optional.empty());
    }

    private static Member member(Catalogue catalogue, String name) {
        return new Member(section(catalogue, name), false);
    }

    private static Section section(Catalogue catalogue, String name) {
        return catalogue.section(name).orElseThrow();
    }
}
