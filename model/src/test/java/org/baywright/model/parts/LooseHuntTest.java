package org.baywright.model.parts;

import java.util.*;
import net.jqwik.api.*;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Definitions;

class LooseHuntTest {
    @Provide
    Arbitrary<Definition> a() {
        return WallSheds.any();
    }

    @Provide
    Arbitrary<Definition> b() {
        return Definitions.clad().filter(d -> d.shape().bays() <= 4);
    }

    static int n;

    static void look(String w, Definition d) {
        Shed shed = Shed.of(d);
        Assemblies as = Assemblies.of(shed);
        n++;
        String words = " col " + d.steel() + " girt " + d.envelope().walls() + " leans " + d.leanTos() + " sheet "
                + d.envelope().sheeting().leanToWalls()
                + d.envelope().sheeting().behindLeanTos() + " eave " + d.shape() + " heavier " + d.heavier()
                + " openings " + d.envelope().openings() + d.envelope().bracing();
        for (Part p : shed.parts()) {
            if (as.loose(p) > 0) {
                System.out.println("LOOSE " + w + " " + n + " " + p.mark() + " " + as.loose(p) + " at "
                        + p.places().get(0).placement().origin() + " size "
                        + p.solid().profile().depth() + "x"
                        + p.solid().profile().width() + " frame "
                        + p.places().get(0).frame());
                System.out.println("DEF " + n + words);
            }
        }
        List<Standing> all = new ArrayList<>();
        shed.parts().forEach(p -> p.places().forEach(pl -> all.add(Standing.of(p, pl))));
        org.locationtech.jts.index.strtree.STRtree t = new org.locationtech.jts.index.strtree.STRtree();
        all.forEach(s -> t.insert(s.plan(), s));
        Set<String> told = new HashSet<>();
        for (Standing s : all) {
            if (s.part().kind() != PartKind.GIRT_CLEAT
                    && s.part().kind() != PartKind.MULLION_CLEAT
                    && s.part().kind() != PartKind.MULLION
                    && s.part().kind() != PartKind.BRIDGING
                    && s.part().kind() != PartKind.FLY_BRACE_LUG
                    && !s.part().kind().name().equals("BRIDGING_CLEAT")) continue;
            for (Object o : t.query(s.plan())) {
                Standing q = (Standing) o;
                if (q.place() == s.place()) continue;
                double by = Neighbours.overlap(s, q);
                if (by > 0.2 && told.add(s.part().mark() + q.part().mark())) {
                    System.out.println("INTO " + w + " " + n + " " + s.part().mark() + " " + by + " into "
                            + q.part().mark() + " at " + s.place().placement().origin() + " size "
                            + s.part().solid().profile().depth() + "x"
                            + s.part().solid().profile().width());
                    System.out.println("DEF " + n + words);
                }
            }
        }
    }

    @Property(tries = 120, seed = "4711")
    void walls(@ForAll("a") Definition d) {
        look("wall", d);
    }

    @Property(tries = 100, seed = "4711")
    void clad(@ForAll("b") Definition d) {
        look("clad", d);
    }
}
