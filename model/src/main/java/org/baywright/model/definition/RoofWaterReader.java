package org.baywright.model.definition;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.baywright.model.catalogue.RainwaterGoods;
import org.baywright.model.catalogue.RainwaterGoods.DownpipeSize;
import org.baywright.model.catalogue.RainwaterGoods.GutterSize;

/** Reads gutters and downpipes: the catalogue's figures for their names, each replaced when the file gives it. */
record RoofWaterReader(GroupReader group) {
    RoofWater read() {
        return new RoofWater(group.number("rainfall"), gutter(), group.number("fall"), downpipe());
    }

    private RoofWater.Gutter gutter() {
        String name = group.text("gutter");
        Optional<GutterSize> known = RainwaterGoods.shipped().gutter(name);
        boolean own = group.given("gutterDepth").isPresent()
                && group.given("gutterWidth").isPresent();
        if (known.isEmpty() && !own) {
            tellUnknown("gutter", name, RainwaterGoods.shipped().gutterNames(), "gutterDepth and gutterWidth");
        }
        OptionalDouble depth = group.numberIfGiven("gutterDepth");
        OptionalDouble width = group.numberIfGiven("gutterWidth");
        boolean asKnown = known.isPresent() && depth.isEmpty() && width.isEmpty();
        double d = depth.orElse(known.map(GutterSize::depth).orElse(100.0));
        double w = width.orElse(known.map(GutterSize::width).orElse(100.0));
        double usual = asKnown ? known.get().areaMm2() : d * w;
        double area = group.numberIfGiven("gutterArea").orElse(usual);
        if (area > d * w) {
            String message = NumberText.plain(area) + " mm² was read; a gutter " + NumberText.plain(d) + " deep and "
                    + NumberText.plain(w) + " wide holds at most " + NumberText.plain(d * w);
            group.findings().error("gutter-area", group.where("gutterArea"), message, "lessen it or leave it out");
        }
        return new RoofWater.Gutter(known.map(GutterSize::name).orElse(name), d, w, area);
    }

    private RoofWater.Downpipe downpipe() {
        String name = group.text("downpipe");
        Optional<DownpipeSize> known = RainwaterGoods.shipped().downpipe(name);
        if (known.isEmpty() && group.given("downpipeArea").isEmpty()) {
            tellUnknown("downpipe", name, RainwaterGoods.shipped().downpipeNames(), "downpipeArea");
        }
        double usual = known.map(DownpipeSize::areaMm2).orElse(1000.0);
        return new RoofWater.Downpipe(
                known.map(DownpipeSize::name).orElse(name),
                group.numberIfGiven("downpipeArea").orElse(usual));
    }

    private void tellUnknown(String key, String name, List<String> names, String needed) {
        String message = "'" + Spelling.shown(name) + "' is not in the catalogue; one of your own also needs " + needed;
        group.findings().error("unknown-" + key, group.where(key), message, Spelling.remedy(name, names));
    }
}
