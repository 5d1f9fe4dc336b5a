package org.baywright.model.definition;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.baywright.model.catalogue.BeamSection;
import org.baywright.model.catalogue.Catalogue;
import org.baywright.model.catalogue.ColdFormedSection;
import org.baywright.model.catalogue.HollowSection;
import org.baywright.model.catalogue.Section;

/** Reads one of the user's own sections. */
record OwnSectionReader(GroupReader group) {
    private static final String SOURCE = "given in the definition";

    private enum Form {
        HOLLOW(List.of("thickness"), List.of("lip", "flangeThickness", "webThickness", "rootRadius")),
        BEAM(List.of("flangeThickness", "webThickness"), List.of("thickness", "lip")),
        C(List.of("thickness", "lip"), List.of("flangeThickness", "webThickness", "rootRadius")),
        Z(C.needed, C.foreign),
        TOP_HAT(C.needed, C.foreign);

        private final List<String> needed;
        private final List<String> foreign;

        Form(List<String> needed, List<String> foreign) {
            this.needed = needed;
            this.foreign = foreign;
        }
    }

    /** The section; a wrong one gets a stand-in of its name, so that members that use it are not told off as well. */
    Section read(Catalogue shipped) {
        String name = group.text("name");
        String grade = group.text("grade");
        double depth = group.number("depth");
        double width = group.number("width");
        tellHidden(name, shipped);
        return group.choiceIfGiven("shape", Form.class)
                .flatMap(form -> section(form, name, depth, width, grade))
                .orElseGet(() -> HollowSection.asNzs1163(name, 100, 100, 5, grade, SOURCE));
    }

    /** Empty when it cannot be made, which has then been told; the section itself knows what fits inside it. */
    private Optional<Section> section(Form form, String name, double depth, double width, String grade) {
        tellForeign(form);
        List<OptionalDouble> t = form.needed.stream().map(this::needed).toList();
        double radius = form == Form.BEAM ? group.number("rootRadius") : 0;
        if (t.stream().anyMatch(OptionalDouble::isEmpty)) {
            return Optional.empty();
        }
        try {
            double first = t.get(0).getAsDouble();
            double second = t.get(t.size() - 1).getAsDouble();
            return Optional.of(
                    switch (form) {
                        case HOLLOW -> HollowSection.asNzs1163(name, depth, width, first, grade, SOURCE);
                        case BEAM -> new BeamSection(name, depth, width, first, second, radius, grade, SOURCE);
                        case C, Z, TOP_HAT ->
                            new ColdFormedSection(
                                    name,
                                    ColdFormedSection.Form.valueOf(form.name()),
                                    depth,
                                    width,
                                    second,
                                    first,
                                    grade,
                                    SOURCE);
                    });
        } catch (IllegalArgumentException e) {
            group.findings().error("bad-section", group.where(), e.getMessage(), "check its dimensions");
            return Optional.empty();
        }
    }

    private void tellHidden(String name, Catalogue shipped) {
        if (shipped.section(name).isPresent()) {
            String message = "your section takes the place of the catalogue's " + Spelling.shown(name);
            group.findings().advice("section-hidden", group.where("name"), message, "");
        }
    }

    private void tellForeign(Form form) {
        form.foreign.stream()
                .filter(k -> group.given(k).isPresent())
                .forEach(k -> tell("shape-key", k, "'" + k + "' is not a dimension of this shape", "remove it"));
    }

    private OptionalDouble needed(String key) {
        if (group.given(key).isEmpty()) {
            tell("missing-key", key, "'" + key + "' is missing from this shape", "add " + key);
        }
        return group.numberIfGiven(key);
    }

    private void tell(String code, String key, String message, String remedy) {
        group.findings().error(code, group.where(key), message, remedy);
    }
}
