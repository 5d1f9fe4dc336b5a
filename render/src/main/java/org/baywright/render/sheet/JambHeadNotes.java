package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.baywright.model.parts.Assemblies;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Place;
import org.baywright.model.parts.Shed;

/** How the heads of side walls' jambs are held, and which of them the engineer has to show. */
final class JambHeadNotes {
    private JambHeadNotes() {}

    /** None without jambs in side walls. */
    static List<String> of(Shed shed) {
        WallMembers walls = new WallMembers(shed);
        List<MemberAxis> jambs = MemberAxis.of(shed, Set.of(PartKind.JAMB)).stream()
                .filter(jamb -> walls.of(jamb).filter(w -> !w.wall().isEnd()).isPresent())
                .toList();
        Set<Place> held = held(shed);
        String free = jambs.stream()
                .filter(jamb -> !held.contains(jamb.place()))
                .map(jamb -> jamb.part().mark())
                .distinct()
                .collect(Collectors.joining(", "));
        List<String> notes = new ArrayList<>();
        if (!held.isEmpty()) {
            notes.add(
                    "Jamb cleats " + marks(shed) + " bolt the heads of side walls' jambs to the purlin over them, which"
                            + " so rests on the jambs and is held down by them: the engineer confirms it, or has the holes of"
                            + " the cleats slotted.");
        }
        if (!free.isEmpty()) {
            notes.add("Jambs of side walls stop under the roof's steel, and no purlin is near enough to some of " + free
                    + ": the engineer shows what holds their heads, such as a header across to the columns.");
        }
        return notes;
    }

    private static Set<Place> held(Shed shed) {
        Assemblies assemblies = Assemblies.of(shed);
        return shed.parts(PartKind.JAMB).stream()
                .flatMap(jamb -> assemblies.of(jamb).stream())
                .filter(a -> a.welded().stream().anyMatch(w -> w.plate().kind() == PartKind.JAMB_CLEAT))
                .flatMap(a -> a.places().stream())
                .collect(Collectors.toSet());
    }

    private static String marks(Shed shed) {
        return shed.parts(PartKind.JAMB_CLEAT).stream().map(Part::mark).collect(Collectors.joining(", "));
    }
}
