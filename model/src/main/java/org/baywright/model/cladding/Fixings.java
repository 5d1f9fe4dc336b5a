package org.baywright.model.cladding;

import java.util.List;
import org.baywright.model.catalogue.SheetProfile;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Place;
import org.baywright.model.parts.Shed;

/**
 * Screws and sundries as counted, before any is added or rounded to a box.
 *
 * @param roofScrews through roof sheets
 * @param wallScrews through wall sheets
 * @param stitchScrews along side laps
 * @param flashingScrews along flashings
 * @param rivets at flashing laps
 * @param sealantM bead at flashing laps, m
 * @param closuresM profiled strip under ridges and over gutters, m
 * @param blanketM2 insulation with its mesh, m²
 */
public record Fixings(
        int roofScrews,
        int wallScrews,
        int stitchScrews,
        int flashingScrews,
        int rivets,
        double sealantM,
        double closuresM,
        double blanketM2) {
    /** Between stitch screws of a side lap. @source 600 to 900: common practice */
    private static final double STITCH = 600;

    /** Between screws along each edge of a flashing. Common practice, no source. */
    private static final double FLASHING = 300;

    /** Between rivets across a flashing's lap. @source 50 mm centres: common practice */
    private static final double RIVETS = 50;

    /** How far from a sheet's plane a row may lie to be one of its supports. */
    private static final double NEAR = 400;

    /** The counts of a building. */
    public static Fixings of(Shed shed, Cladding cladding) {
        List<Surface> roofs = cladding.surfaces(Surface.Role.ROOF);
        List<Surface> walls = cladding.surfaces(Surface.Role.WALL);
        int stitches = cladding.surfaces().stream().mapToInt(Fixings::stitches).sum();
        int laps = cladding.flashings().stream()
                .mapToInt(f -> f.pieces() - f.runs().size())
                .sum();
        int rivets = cladding.flashings().stream()
                .mapToInt(f -> (f.pieces() - f.runs().size()) * (int) Math.ceil(f.girth() / RIVETS))
                .sum();
        double sealant = cladding.flashings().stream()
                .mapToDouble(f -> (f.pieces() - f.runs().size()) * f.girth())
                .sum();
        boolean blanket = shed.definition().envelope().sheeting().roof().blanket();
        return new Fixings(
                roofs.stream().mapToInt(s -> roofScrews(shed, s)).sum(),
                walls.stream().mapToInt(s -> wallScrews(shed, s)).sum(),
                stitches,
                cladding.flashings().stream().mapToInt(Fixings::screws).sum(),
                laps == 0 ? 0 : rivets,
                sealant / 1000,
                closures(cladding) / 1000,
                blanket ? roofs.stream().mapToDouble(Surface::grossM2).sum() : 0);
    }

    /** All screws together. */
    public int screws() {
        return roofScrews + wallScrews + stitchScrews + flashingScrews;
    }

    private static int stitches(Surface surface) {
        List<Surface.Sheet> sheets = surface.sheets();
        int stitches = 0;
        for (int i = 1; i < sheets.size(); i++) {
            Surface.Sheet sheet = sheets.get(i);
            if (sheet.left() > sheets.get(0).left() + 1) {
                stitches += (int) Math.ceil(sheet.length() / STITCH) - 1;
            }
        }
        return stitches;
    }

    private static int screws(Flashing flashing) {
        return 2 * (int) Math.ceil(flashing.length() / FLASHING);
    }

    private static double closures(Cladding cladding) {
        double ridges = cladding.flashings().stream()
                .filter(f -> f.kind() == Flashing.Kind.RIDGE)
                .mapToDouble(f -> 2 * f.length())
                .sum();
        return ridges
                + cladding.gutters().stream().mapToDouble(GutterRun::length).sum();
    }

    private static int roofScrews(Shed shed, Surface surface) {
        SheetProfile.Screws screws = surface.profile().screws();
        List<Double> rows = supports(shed, surface, PartKind.PURLIN);
        int count = 0;
        for (Surface.Sheet sheet : surface.sheets()) {
            List<Double> under = under(rows, sheet);
            for (int i = 0; i < under.size(); i++) {
                boolean end = i == 0 || i == under.size() - 1;
                count += end ? screws.atEnds() : screws.between();
            }
        }
        return count;
    }

    private static int wallScrews(Shed shed, Surface surface) {
        List<Double> rows = supports(shed, surface, PartKind.GIRT);
        double top = surface.outline().stream().mapToDouble(Vec2::y).max().orElseThrow();
        return surface.sheets().stream()
                .mapToInt(sheet -> {
                    // The upper end is fixed to the eave purlin, or along the rake.
                    int upper = sheet.high() > top - NEAR || sheet.high() > highest(rows) ? 1 : 0;
                    return (under(rows, sheet).size() + upper)
                            * surface.profile().screws().onWalls();
                })
                .sum();
    }

    private static double highest(List<Double> rows) {
        return rows.stream().mapToDouble(r -> r).max().orElse(0);
    }

    private static List<Double> under(List<Double> rows, Surface.Sheet sheet) {
        return rows.stream().filter(r -> r >= sheet.low() && r <= sheet.high()).toList();
    }

    /** Where rows of a kind lie under a surface, up along its sheets; lengths of one row count once. */
    static List<Double> supports(Shed shed, Surface surface, PartKind kind) {
        double top = surface.outline().stream().mapToDouble(Vec2::y).max().orElseThrow();
        return shed.parts(kind).stream()
                .flatMap(part -> part.places().stream().map(place -> middle(part, place)))
                .map(at -> surface.axes().toLocal(at))
                .filter(at -> at.z() < 0 && at.z() > -NEAR)
                .filter(at -> at.x() > 0 && at.x() < surface.outline().get(1).x())
                .map(at -> Math.rint(at.y()))
                .filter(v -> v > surface.outline().get(0).y() && v < top)
                .distinct()
                .sorted()
                .toList();
    }

    private static Vec3 middle(Part part, Place place) {
        return place.placement().toWorld(part.solid().centreOfGravity());
    }
}
