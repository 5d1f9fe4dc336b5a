package org.baywright.model.definition;

import java.util.List;
import java.util.Optional;
import org.baywright.model.catalogue.Catalogue;
import org.baywright.model.catalogue.Section;
import org.baywright.model.problem.Where;

/**
 * Reads a member: the name of a section, or a group with the section and how it stands.
 *
 * @param catalogue the user's own sections first
 * @param values reader of single values
 */
record MemberReader(Catalogue catalogue, ValueReader values) {
    /** A member of the ordinary frames; what is usual when it is left out or names no section. */
    Member ordinary(GroupReader file, String key) {
        String usual = Keys.FILE.key(key).usual().orElseThrow();
        Located found = file.value(key).orElseThrow();
        return member(found, new Located.Scalar(found.where(), usual));
    }

    /** A member in place of an ordinary one, whose section is kept when no other is named. */
    Optional<Member> instead(GroupReader heavier, String key, Member ordinary) {
        return heavier.given(key)
                .map(f -> member(
                        f, new Located.Scalar(f.where(), ordinary.section().designation())));
    }

    /** A section for one use; what is usual when it is left out, is unknown or cannot serve. */
    Section section(GroupReader group, String key, SectionUse use, String usual) {
        Located found = group.value(key).orElse(new Located.Scalar(group.where(key), usual));
        return values.text(found)
                .flatMap(name -> named(name, found.where()))
                .filter(section -> serves(section, use, found.where()))
                .orElseGet(() -> catalogue.section(usual).orElseThrow());
    }

    /** The section that a value names; one that is not known is told. */
    Optional<Section> known(Located found) {
        return values.text(found).flatMap(name -> named(name, found.where()));
    }

    private boolean serves(Section section, SectionUse use, Where where) {
        if (!use.allows(section)) {
            String message = Spelling.shown(section.designation()) + " cannot serve here; " + use.words() + " can";
            values.findings().error("section-kind", where, message, "write " + use.example());
        }
        return use.allows(section);
    }

    private Member member(Located found, Located.Scalar unnamed) {
        if (found instanceof Located.Mapping) {
            GroupReader group = GroupReader.of(found, Keys.MEMBER, values);
            boolean turned = values.flag(group.value("turned").orElseThrow());
            return new Member(section(group.given("section").orElse(unnamed)), turned);
        }
        return new Member(section(found), false);
    }

    private Section section(Located found) {
        return values.text(found)
                .flatMap(name -> named(name, found.where()))
                .orElse(catalogue.sections().get(0));
    }

    private Optional<Section> named(String name, Where where) {
        Optional<Section> section = catalogue.section(name);
        if (section.isEmpty()) {
            String message = "'" + Spelling.shown(name) + "' is in neither the catalogue nor your sections";
            values.findings().error("unknown-section", where, message, nearest(name));
        }
        return section;
    }

    private String nearest(String name) {
        List<String> near = catalogue.near(name);
        return near.isEmpty()
                ? "name one of the catalogue, or give its dimensions under sections"
                : "did you mean " + String.join(" or ", near) + "?";
    }
}
