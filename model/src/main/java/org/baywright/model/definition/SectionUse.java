package org.baywright.model.definition;

import java.util.function.Predicate;
import org.baywright.model.catalogue.BarSection;
import org.baywright.model.catalogue.BeamSection;
import org.baywright.model.catalogue.ColdFormedSection;
import org.baywright.model.catalogue.HollowSection;
import org.baywright.model.catalogue.Section;

/** What a section of the envelope is for, and so which kinds of section can be it. */
enum SectionUse {
    ROW(
            "a C, a Z, a top hat or a hollow section",
            "a section such as Z150-15",
            s -> s instanceof ColdFormedSection || s instanceof HollowSection),
    UPRIGHT(
            "a hollow section, a beam or a C",
            "a section such as SHS 100x100x4",
            s -> s instanceof HollowSection
                    || s instanceof BeamSection
                    || s instanceof ColdFormedSection folded && folded.form() == ColdFormedSection.Form.C),
    BRACE("a rod, a flat or an angle", "a section such as ROD 16", s -> s instanceof BarSection),
    FLY_BRACE(
            "an angle or a flat",
            "a section such as EA 50x50x5",
            s -> s instanceof BarSection bar && bar.form() != BarSection.Form.ROUND),
    BEAM(
            "a beam or a hollow section",
            "a section such as 250UB31.4",
            s -> s instanceof BeamSection || s instanceof HollowSection);

    private final String words;
    private final String example;
    private final Predicate<Section> kinds;

    SectionUse(String words, String example, Predicate<Section> kinds) {
        this.words = words;
        this.example = example;
        this.kinds = kinds;
    }

    boolean allows(Section section) {
        return kinds.test(section);
    }

    String words() {
        return words;
    }

    String example() {
        return example;
    }
}
