package org.baywright.model.definition;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.baywright.model.catalogue.Catalogue;
import org.baywright.model.catalogue.Section;
import org.baywright.model.problem.Where;

/**
 * Reads a definition in YAML or JSON: text to tree, overrides onto the tree, tree to values. No text makes it throw;
 * all that is wrong is told at once.
 */
public final class DefinitionReader {
    private final GroupReader file;
    private final Catalogue shipped;

    private DefinitionReader(GroupReader file, Catalogue shipped) {
        this.file = file;
        this.shipped = shipped;
    }

    /**
     * Reads a definition.
     *
     * @param sourceName what problems call the file
     * @param text YAML or JSON
     * @param overrides {@code key=value}, applied in order
     * @param catalogue sections and anchors to choose from
     */
    public static Reading read(String sourceName, String text, List<String> overrides, Catalogue catalogue) {
        Findings findings = new Findings();
        Optional<Located> read =
                SyntaxTree.ofFile(sourceName, text, findings).map(tree -> Setting.apply(tree, overrides, findings));
        Optional<Definition> definition = read.map(tree -> GroupReader.of(tree, Keys.FILE, new ValueReader(findings)))
                .map(file -> new DefinitionReader(file, catalogue).definition());
        return new Reading(
                definition.filter(d -> findings.errors() == 0), findings.inOrder(), Places.of(sourceName, read));
    }

    private Definition definition() {
        Shape shape = new ShapeReader(file).read();
        MemberReader members = new MemberReader(shipped.with(ownSections()), file.values());
        Steel steel = new Steel(
                members.ordinary(file, "column"),
                members.ordinary(file, "rafter"),
                members.ordinary(file, "leanToColumn"),
                members.ordinary(file, "leanToRafter"));
        return new Definition(
                project(),
                shape,
                new LeanToReader(file, shape.bays()).read(),
                steel,
                new HeavierReader(file, shape.frames(), shape.roofShape(), members, steel).read(),
                new PlatesReader(file, shape.kneeJoint()).read(),
                new AnchorReader(file.group("anchor", Keys.ANCHOR), shipped).read(),
                new EnvelopeReader(file, shape, members, shipped).read(steel),
                new GroundReader(file).read(),
                new SawReader(file, members).read());
    }

    private List<Section> ownSections() {
        List<Section> own = new ArrayList<>();
        for (Located entry : file.list("sections", "sections, each {name, shape, depth, width, ...}")) {
            GroupReader group = GroupReader.of(entry, Keys.SECTION, file.values());
            Section section = new OwnSectionReader(group).read(shipped);
            tellTwice(own, section, group.where("name"));
            own.add(section);
        }
        return own;
    }

    private void tellTwice(List<Section> own, Section section, Where where) {
        boolean named = !section.designation().isEmpty();
        if (named
                && new Catalogue(own, shipped.anchors(), shipped.stockLengths(), List.of())
                        .section(section.designation())
                        .isPresent()) {
            String message = "'" + Spelling.shown(section.designation()) + "' names two of your sections";
            file.findings().error("duplicate-section", where, message, "give each its own name");
        }
    }

    private Project project() {
        GroupReader group = file.group("project", Keys.PROJECT);
        return new Project(
                file.text("name"),
                group.text("owner"),
                group.text("site"),
                group.text("legalDescription"),
                group.text("drawnBy"),
                group.text("date"),
                group.text("revision"));
    }
}
