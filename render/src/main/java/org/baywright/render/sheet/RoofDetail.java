package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.cladding.Building;
import org.baywright.model.setout.RoofRows;
import org.baywright.render.mark.Layer;
import org.baywright.render.view.ViewLine;
import org.baywright.render.view.Window;

/**
 * Sheets, flashings, gutters and their sizes where the plane through the middle of a detail cuts the roof.
 *
 * @param building what is shown
 * @param detail of eaves, ridge or a jamb's head
 * @param figures its sizes
 */
record RoofDetail(Building building, Detail detail, DetailFigures figures) {
    void draw() {
        sizes();
        clad();
    }

    private void clad() {
        PlacedView view = figures.view();
        List<String> named = new ArrayList<>();
        for (CladdingSection.Cut cut : new CladdingSection(building, detail.at().y()).cuts()) {
            List<ViewLine> seen = Window.cut(cut.lines(), figures.window());
            view.draw(seen, cut.pen(), Layer.STEEL);
            if (!seen.isEmpty() && !named.contains(cut.name())) {
                named.add(cut.name());
                ViewLine longest = seen.stream()
                        .reduce((a, b) -> a.length() >= b.length() ? a : b)
                        .orElseThrow();
                view.annotate().note(longest.from().plus(longest.to()).times(0.5), cut.name());
            }
        }
    }

    /** What the plane through the detail's middle meets: sheet ends, rows of purlins, gutters. */
    private void sizes() {
        double y = detail.at().y();
        List<RoofRows> slopes =
                RoofRows.of(building.shed().definition(), building.shed().setOut());
        figures.ridge(slopes);
        for (RoofRows rows : slopes) {
            if (rows.from() <= y && y <= rows.to()) {
                boolean low = Math.abs(detail.at().x() - rows.slope().eave())
                        < rows.slope().run() / 2;
                figures.rows(rows, low ? rows.sheetLow() : rows.sheetHigh());
                building.cladding().gutters().stream()
                        .filter(g -> g.slope().line().equals(rows.slope().line()))
                        .filter(g -> g.from().y() <= y && y <= g.to().y())
                        .forEach(g -> figures.gutter(building, g, rows));
            }
        }
    }
}
