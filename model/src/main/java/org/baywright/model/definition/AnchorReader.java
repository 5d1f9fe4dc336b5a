package org.baywright.model.definition;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.baywright.model.catalogue.AnchorType;
import org.baywright.model.catalogue.Catalogue;

/**
 * Reads the anchor: the catalogue's figures for its size, each replaced when the file gives it.
 *
 * @param group the keys of the anchor
 * @param catalogue example products
 */
record AnchorReader(GroupReader group, Catalogue catalogue) {
    private static final Pattern METRIC = Pattern.compile("\\s*[mM]\\s*(\\d{1,2})\\s*");
    private static final List<String> PRODUCT_FIGURES =
            List.of("holeDiameter", "embedment", "minimumEdge", "minimumConcrete");

    Anchor read() {
        long before = group.findings().errors();
        String size = group.text("size");
        Optional<AnchorType> known = catalogue.anchor(size);
        if (known.isEmpty() && !size.isEmpty()) {
            tellMissing(size);
        }
        double rod = figure("rodDiameter", known.map(AnchorType::rodDiameter).orElse(metric(size)));
        // Data sheets of such anchors often give one figure for both, so a product's edge stands in for its spacing.
        double edge = figure("minimumEdge", known, AnchorType::minimumEdge);
        Anchor anchor = new Anchor(
                known.map(AnchorType::size).orElse(size),
                rod,
                figure("holeDiameter", known, AnchorType::holeDiameter),
                figure("embedment", known, AnchorType::embedment),
                edge,
                figure("minimumSpacing", known.map(AnchorType::minimumSpacing).orElse(edge)),
                figure("minimumConcrete", known, AnchorType::minimumConcrete),
                figure("plateHole", known.map(AnchorType::plateHole).orElse(rod + 6)),
                new CartridgeReader(group.group("adhesive", Keys.ADHESIVE)).read());
        if (group.findings().errors() == before) {
            tellTight("holeDiameter", anchor.holeDiameter(), rod);
            tellTight("plateHole", anchor.plateHole(), rod);
        }
        return anchor;
    }

    /**
     * A rod's diameter is in a metric size's name; its plate hole is 6 mm larger unless given.
     *
     * <p>@source plate hole: "Washer and hole sizes in base plates", steel construction body of New Zealand: at most
     * anchor + 6 mm
     */
    private static double metric(String size) {
        Matcher m = METRIC.matcher(size);
        return m.matches() ? Double.parseDouble(m.group(1)) : 0;
    }

    private void tellMissing(String size) {
        List<String> needed = metric(size) > 0 ? PRODUCT_FIGURES : withRod();
        List<String> missing =
                needed.stream().filter(k -> group.given(k).isEmpty()).toList();
        if (!missing.isEmpty()) {
            List<String> sizes =
                    catalogue.anchors().stream().map(AnchorType::size).toList();
            String message = "'" + Spelling.shown(size) + "' is not in the catalogue (" + String.join(", ", sizes)
                    + "); a product of your own also needs " + String.join(", ", missing);
            group.findings().error("unknown-anchor", group.where("size"), message, Spelling.remedy(size, sizes));
        }
    }

    private static List<String> withRod() {
        return Stream.concat(Stream.of("rodDiameter"), PRODUCT_FIGURES.stream()).toList();
    }

    private double figure(String key, Optional<AnchorType> known, ToDoubleFunction<AnchorType> usual) {
        return figure(key, known.map(usual::applyAsDouble).orElse(0.0));
    }

    private double figure(String key, double usual) {
        return group.numberIfGiven(key).orElse(usual);
    }

    private void tellTight(String key, double hole, double rod) {
        if (hole <= rod) {
            String message = NumberText.plain(hole) + " was read; the rod is " + NumberText.plain(rod) + " mm";
            group.findings().error("anchor-hole", group.where(key), message, "write more than the rod's diameter");
        }
    }
}
