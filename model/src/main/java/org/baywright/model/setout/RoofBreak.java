package org.baywright.model.setout;

import org.baywright.model.definition.Definition;

/**
 * Where the sheets of a main slope and of a lean-to that carries it on at another pitch meet. Both lie a purlin's depth
 * above steel that meets at the string line; being square to their slopes, their planes meet further out.
 *
 * <pre>
 *   main p/cos a − d·tan a = lean-to p/cos b − d·tan b
 * </pre>
 *
 * @source plane geometry
 * @param out from the string line out to where the planes meet, level; zero where they are one plane
 * @param flatter whether the lean-to is the flatter one, so that the main sheets would run through its sheets
 */
public record RoofBreak(double out, boolean flatter) {
    private static final double SAME = 1e-9;

    /** The break below a main slope, at a lean-to that carries it on. */
    public static RoofBreak of(Definition definition, ColumnLine main, ColumnLine leanTo) {
        double purlin = definition.envelope().purlins().member().depth();
        double rises = main.riseInward() - leanTo.riseInward();
        double apart = main.roof().plumb(purlin) - leanTo.roof().plumb(purlin);
        double out = Math.abs(rises) < SAME ? 0 : Math.max(0, apart / rises);
        return new RoofBreak(out, rises > SAME);
    }
}
