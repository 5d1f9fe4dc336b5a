package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.baywright.model.definition.RoofShape;
import org.baywright.model.definition.Side;
import org.baywright.model.geometry.Tolerance;
import org.baywright.model.parts.Shed;
import org.baywright.model.setout.ColumnLine;
import org.baywright.model.setout.SetOut;
import org.baywright.render.dimension.Level;

/** The levels that elevations and sections show. The bare word eave height is never printed: each says to where. */
final class Levels {
    private static final String TO = ", top of rafter steel";

    private Levels() {}

    /** Floor, eaves and apex, and the outer eaves of those lean-tos that are wanted. */
    static List<Level> of(Shed shed, Predicate<ColumnLine> leanTo) {
        SetOut setOut = shed.setOut();
        List<Level> levels = new ArrayList<>();
        levels.add(new Level("FFL, finished floor", 0));
        setOut.leanTos().stream().filter(leanTo).forEach(line -> add(levels, leanToName(line), line.eaveHeight()));
        boolean gable = shed.definition().shape().roofShape() == RoofShape.GABLE;
        add(levels, (gable ? "Eave" : "Low eave") + TO, setOut.main(Side.LEFT).eaveHeight());
        add(levels, (gable ? "Apex" : "High eave") + TO, setOut.apexHeight());
        double overhang = shed.definition().plates().rafterOverhang();
        if (!gable && overhang > 0) {
            ColumnLine high = setOut.main(Side.RIGHT);
            add(levels, "High end of rafter, top of steel", high.roof().heightAt(high.x() + overhang));
        }
        return levels;
    }

    private static String leanToName(ColumnLine line) {
        return "Lean-to outer eave, line " + line.letter();
    }

    /** One height is shown once. */
    private static void add(List<Level> levels, String name, double height) {
        if (levels.stream().noneMatch(l -> Math.abs(l.height() - height) < Tolerance.COINCIDENT)) {
            levels.add(new Level(name, height));
        }
    }
}
