package org.baywright.model.nesting;

import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Definitions;
import org.baywright.model.definition.Seeds;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.Shed;

/** Random sheds, every bar looked at as plane polygons. */
class ShedCuttingPropertyTest {
    @Provide
    Arbitrary<Definition> sheds() {
        return Definitions.clad();
    }

    @Property(tries = 60, seed = Seeds.SHEDS)
    void everyPieceIsCutOnceFromABarThatTakesIt(@ForAll("sheds") Definition definition) {
        Shed shed = Shed.of(definition);
        ShedCutting cutting = ShedCutting.of(shed);
        cutting.sections().forEach(BarChecks::areRight);
        int asked = shed.parts().stream()
                .filter(ShedCutting::isSawn)
                .mapToInt(Part::quantity)
                .sum();
        int made = cutting.sections().stream()
                .flatMap(c -> c.bars().stream())
                .mapToInt(b -> b.pieces().size() * b.times())
                .sum();
        assertEquals(asked, made);
    }
}
