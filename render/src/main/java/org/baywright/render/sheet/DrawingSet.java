package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Supplier;
import org.baywright.model.cladding.Building;
import org.baywright.model.definition.Project;
import org.baywright.model.parts.Shed;
import org.baywright.model.takeoff.Bill;

/** The drawings of a shed, framed and numbered. */
public final class DrawingSet {
    private DrawingSet() {}

    /** All the drawings. */
    public static SheetSet of(Building building, Bill bill) {
        return of(building, bill, SetScope.ALL);
    }

    /** The drawings of one set. */
    public static SheetSet of(Building building, Bill bill, SetScope scope) {
        Project project = building.shed().definition().project();
        return new SheetSet(
                project.name() + (scope == SetScope.COUNCIL ? ": council drawings" : ": drawings"),
                project.drawnBy(),
                "Draft drawings, not for construction until certified",
                Framing.framed(project, drafts(building, bill, scope)));
    }

    /** All sheets before framing, with every dimension they print. */
    static List<Draft> drafts(Building building, Bill bill) {
        return drafts(building, bill, SetScope.ALL);
    }

    /** The sheets of one set before framing. */
    static List<Draft> drafts(Building building, Bill bill, SetScope scope) {
        Shed shed = building.shed();
        // No series needs another, so they are drawn side by side; their order is kept.
        List<Supplier<List<Draft>>> series = List.of(
                () -> SiteSheet.of(shed),
                () -> PlanSheet.of(building),
                () -> ElevationSheets.of(building),
                () -> SectionSheets.of(building),
                () -> BaseSheet.of(shed),
                () -> FramingSet.of(building, scope),
                () -> DetailSheets.of(building),
                () -> schedules(shed, bill, scope));
        List<Draft> drafts = new ArrayList<>(
                series.parallelStream().map(Supplier::get).flatMap(List::stream).toList());
        if (scope == SetScope.ALL) {
            drafts.addAll(FlashingSheets.of(building, next(drafts, "S7.")));
        }
        // Joints come with their sections but are numbered, and so bound, after the set-out.
        drafts.sort(Comparator.comparing(d -> d.number().charAt(1)));
        // The cover lists the others, so it comes last here and first in the set.
        drafts.add(0, CoverSheet.of(building, drafts));
        return drafts;
    }

    /** Openings first: their number does not hang on what else a set has. */
    private static List<Draft> schedules(Shed shed, Bill bill, SetScope scope) {
        List<Draft> schedules = new ArrayList<>(OpeningSchedule.of(shed, 1));
        schedules.addAll(BillSheets.of(shed, bill, scope, schedules.size() + 1));
        if (scope == SetScope.ALL) {
            schedules.addAll(ErectionSheet.of(shed, schedules.size() + 1));
        }
        return schedules;
    }

    /** The number after the highest of a series. */
    private static int next(List<Draft> drafts, String series) {
        return 1
                + drafts.stream()
                        .map(Draft::number)
                        .filter(n -> n.startsWith(series))
                        .mapToInt(n -> Integer.parseInt(n.substring(series.length())))
                        .max()
                        .orElse(0);
    }
}
