package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Envelope;
import org.baywright.model.definition.Sheeting;
import org.baywright.model.definition.Steel;

/** What the building is made of, in one note. */
final class Materials {
    private Materials() {}

    static String words(Definition definition) {
        Steel steel = definition.steel();
        List<String> words = new ArrayList<>();
        words.add("columns " + steel.column().section().designation());
        words.add("rafters " + steel.rafter().section().designation());
        if (!definition.leanTos().isEmpty()) {
            words.add("lean-to columns " + steel.leanToColumn().section().designation());
            words.add("lean-to rafters " + steel.leanToRafter().section().designation());
        }
        if (!definition.heavier().isEmpty()) {
            words.add("heavier sections at named frames");
        }
        if (definition.envelope().isFull()) {
            words.addAll(envelope(definition.envelope()));
        }
        return "Materials as drawn: " + String.join(", ", words)
                + "; grades as scheduled. Concrete, reinforcement and ground: by the engineer.";
    }

    private static List<String> envelope(Envelope envelope) {
        Sheeting sheeting = envelope.sheeting();
        return List.of(
                "purlins " + envelope.purlins().member().section().designation(),
                "girts " + envelope.walls().girts().member().section().designation(),
                "bracing " + envelope.bracing().section().designation(),
                "roof "
                        + sheet(
                                sheeting.roof().profile().name(),
                                sheeting.roof().colour()),
                "walls "
                        + sheet(
                                sheeting.walls().profile().name(),
                                sheeting.walls().colour()),
                envelope.roofWater().gutter().name());
    }

    private static String sheet(String profile, String colour) {
        return profile + " sheet, " + (colour.isBlank() ? "colour by owner" : colour);
    }
}
