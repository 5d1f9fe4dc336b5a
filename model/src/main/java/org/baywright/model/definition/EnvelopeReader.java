package org.baywright.model.definition;

import java.util.List;
import java.util.Optional;
import org.baywright.model.catalogue.BeamSection;
import org.baywright.model.catalogue.Catalogue;
import org.baywright.model.catalogue.Section;

/**
 * Reads what goes on the frame.
 *
 * @param file the top of the file
 * @param shape of the main building
 * @param members reader of sections
 * @param catalogue sheets to choose from
 */
record EnvelopeReader(GroupReader file, Shape shape, MemberReader members, Catalogue catalogue) {
    private enum Place {
        OUTSIDE,
        FLUSH
    }

    /** Reads it; whether a rafter has fly braces depends on the section it is. */
    Envelope read(Steel steel) {
        List<Opening> openings = new OpeningReader(file).read();
        return new Envelope(
                file.choice("envelope", Envelope.Extent.class),
                new PurlinsReader(file.group("purlins", EnvelopeKeys.PURLINS), members).read(longestBay()),
                new Envelope.WallFrame(girts(), mullions()),
                new BracingReader(file.group("bracing", EnvelopeKeys.BRACING), members, shape)
                        .read(openings, steel.rafter().section() instanceof BeamSection),
                new SheetingReader(file, catalogue).read(),
                new RoofWaterReader(file.group("roofWater", EnvelopeKeys.ROOF_WATER)).read(),
                openings,
                liftingBeam());
    }

    private double longestBay() {
        return shape.baySpacings().stream().mapToDouble(s -> s).max().orElse(0);
    }

    private Girts girts() {
        GroupReader group = file.group("girts", EnvelopeKeys.GIRTS);
        Section section = members.section(group, "section", SectionUse.ROW, usualGirt(longestBay()));
        return new Girts(
                new Member(section, false),
                group.number("spacing"),
                group.number("fromFloor"),
                group.choice("place", Place.class) == Place.FLUSH);
    }

    /** A place to start from, not a design. From memory. */
    private static String usualGirt(double bay) {
        return bay <= 4500 ? "C100-12" : bay <= 6500 ? "C150-15" : bay <= 8000 ? "C200-19" : "C250-24";
    }

    private Mullions mullions() {
        GroupReader group = file.group("mullions", EnvelopeKeys.MULLIONS);
        Section section = members.section(group, "section", SectionUse.UPRIGHT, "SHS 100x100x4");
        return new Mullions(
                new Member(section, group.flag("turned")), group.number("spacing"), group.number("slipGap"));
    }

    private Optional<LiftingBeam> liftingBeam() {
        return file.given("liftingBeam")
                .map(found -> GroupReader.of(found, EnvelopeKeys.LIFTING_BEAM, file.values()))
                .map(group -> new LiftingBeamReader(group, members).read(shape.span()));
    }
}
