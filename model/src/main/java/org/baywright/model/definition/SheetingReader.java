package org.baywright.model.definition;

import java.util.List;
import java.util.Optional;
import org.baywright.model.catalogue.Catalogue;
import org.baywright.model.catalogue.SheetProfile;

/**
 * Reads the sheets of roof and walls.
 *
 * @param file the top of the file
 * @param catalogue sheets to choose from
 */
record SheetingReader(GroupReader file, Catalogue catalogue) {
    private enum Rake {
        STEPPED,
        BANDED
    }

    Sheeting read() {
        GroupReader roof = file.group("roofSheets", EnvelopeKeys.ROOF_SHEETS);
        GroupReader walls = file.group("wallSheets", EnvelopeKeys.WALL_SHEETS);
        return new Sheeting(
                new Sheeting.Roof(
                        profile(roof),
                        roof.text("colour"),
                        roof.number("intoGutter"),
                        roof.number("ridgeGap"),
                        (int) roof.number("translucentEvery"),
                        roof.flag("blanket")),
                new Sheeting.Walls(
                        profile(walls),
                        walls.text("colour"),
                        walls.number("belowFloor"),
                        walls.choice("rake", Rake.class) == Rake.BANDED),
                file.number("longestSheet"),
                walls.flag("leanToWalls"),
                walls.flag("behindLeanTos"));
    }

    private SheetProfile profile(GroupReader group) {
        String name = group.text("profile");
        Optional<SheetProfile> sheet = catalogue.sheet(name);
        if (sheet.isEmpty()) {
            List<String> names =
                    catalogue.sheets().stream().map(SheetProfile::name).toList();
            String message = "'" + Spelling.shown(name) + "' is not a sheet of the catalogue";
            group.findings().error("unknown-sheet", group.where("profile"), message, Spelling.remedy(name, names));
        }
        return sheet.orElse(catalogue.sheets().get(0));
    }
}
