package org.baywright.model.definition;

import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Reads span, bays, heights and roof from the top of the file. */
record ShapeReader(GroupReader file) {
    Shape read() {
        return new Shape(
                file.number("span"),
                spacings(bays()),
                file.number("eaveHeight"),
                file.number("roofPitch"),
                file.choice("roofShape", RoofShape.class),
                file.choice("kneeJoint", KneeJoint.class));
    }

    private OptionalInt bays() {
        OptionalDouble bays = file.numberIfGiven("bays");
        return bays.isPresent() ? OptionalInt.of((int) bays.getAsDouble()) : OptionalInt.empty();
    }

    /** One number stands for every bay; a list must have one per bay. Unknown bays are taken as the most allowed. */
    private List<Double> spacings(OptionalInt bays) {
        if (file.given("baySpacing").orElse(null) instanceof Located.Sequence list) {
            return listed(list, bays.orElse(list.items().size()));
        }
        int most = (int) Keys.FILE.key("bays").range().orElseThrow().high();
        return Collections.nCopies(bays.orElse(most), file.number("baySpacing"));
    }

    private List<Double> listed(Located.Sequence list, int bays) {
        Range range = Keys.FILE.key("baySpacing").range().orElseThrow();
        int read = list.items().size();
        List<Double> spacings = list.items().stream()
                .map(i -> file.values().number(i, range).orElse(range.low()))
                .toList();
        if (read == bays) {
            return spacings;
        }
        String message = "a list of " + read + " was read; there are " + bays + " bays";
        file.findings().error("bay-count", list.where(), message, "give one per bay, or one number for all");
        return Collections.nCopies(bays, range.low());
    }
}
