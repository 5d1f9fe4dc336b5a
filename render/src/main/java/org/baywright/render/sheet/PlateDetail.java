package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.baywright.model.definition.Anchor;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.parts.Hole;
import org.baywright.model.parts.PlateStand;
import org.baywright.render.dimension.Annotations;
import org.baywright.render.dimension.Figure;
import org.baywright.render.dimension.Label;
import org.baywright.render.dimension.Paragraph;
import org.baywright.render.dimension.Side;
import org.baywright.render.dimension.Spot;
import org.baywright.render.mark.Layer;
import org.baywright.render.paper.Face;
import org.baywright.render.paper.Pen;
import org.locationtech.jts.geom.Envelope;

/**
 * One base plate with its holes and its upright, seen from above, the outside of the building on the left. Plates on the
 * right-hand side of the building are this turned half round, those of end walls a quarter.
 */
final class PlateDetail {
    private static final Margins MARGINS = new Margins(34, 22, 20, 15);

    /** A longer list of places than this leaves its cell. */
    private static final int LONGEST_LIST = 160;

    private final PlateUse use;
    private final Anchor anchor;

    PlateDetail(PlateUse use, Anchor anchor) {
        this.use = use;
        this.anchor = anchor;
    }

    void draw(SheetBuilder sheet, Envelope cell) {
        String on = use.sections().size() == 1 ? use.sections().get(0) : PlateUse.marks(use.stands());
        String name = Fitted.line(use.plate().mark() + " UNDER " + on, 3.5, Face.BOLD, cell.getWidth() / 2);
        Vec2 size = new Vec2(use.width(), use.depth());
        PlateFace face = PlateFace.of(sheet, name, cell, MARGINS, use.plate(), size);
        face.outline(use.width(), use.depth());
        middleLines(face.view());
        face.upright(use.rings(), use.upright().mark());
        use.holes().forEach(face::hole);
        stringLine(face.view());
        dimensions(face.view().annotate());
        label(face.view());
        PlateFace.words(sheet, words(), cell, MARGINS.above());
    }

    private void middleLines(PlacedView view) {
        double past = 3.0 * view.port().scale().n();
        view.line(new Vec2(-use.width() / 2 - past, 0), new Vec2(use.width() / 2 + past, 0), Pen.GRID, Layer.GRID);
        view.line(new Vec2(0, -use.depth() / 2 - past), new Vec2(0, use.depth() / 2 + past), Pen.GRID, Layer.GRID);
    }

    private double face() {
        return use.outline().getMinX();
    }

    private void stringLine(PlacedView view) {
        double past = 7.0 * view.port().scale().n();
        double end = use.depth() / 2 + past;
        view.line(new Vec2(face(), -end), new Vec2(face(), end), Pen.STRING, Layer.GRID);
    }

    private void dimensions(Annotations annotate) {
        double w = use.width() / 2;
        double d = use.depth() / 2;
        Envelope upright = use.outline();
        annotate.chainWithOverall(Side.BELOW, across(-d, -w, w))
                .chainWithOverall(Side.LEFT, upright(-w, -d, d))
                .chain(Side.ABOVE, across(d, upright.getMinX(), upright.getMaxX()))
                .chain(Side.RIGHT, upright(w, upright.getMinY(), upright.getMaxY()));
    }

    /** The hole lines across the building, and two further stations. */
    private List<Vec2> across(double y, double a, double b) {
        return stations(Vec2::x, a, b).stream().map(x -> new Vec2(x, y)).toList();
    }

    private List<Vec2> upright(double x, double a, double b) {
        return stations(Vec2::y, a, b).stream().map(y -> new Vec2(x, y)).toList();
    }

    private List<Double> stations(ToDoubleFunction<Vec2> along, double a, double b) {
        List<Double> stations = new ArrayList<>(List.of(a, b));
        use.holes().forEach(h -> stations.add(along.applyAsDouble(h.at())));
        return stations;
    }

    private void label(PlacedView view) {
        Hole hole = use.holes().stream()
                .max(Comparator.comparingDouble(h -> h.at().x() + h.at().y()))
                .orElseThrow();
        double scale = view.port().scale().n();
        Vec2 string = view.port().toPaper(new Vec2(face(), -use.depth() / 2 - 6 * scale));
        view.annotate()
                .place(Label.of(string, Label.Pointer.ARROW, "String line").preferring(Spot.BELOW_LEFT, Spot.LEFT));
        double rim = hole.diameter() / 2 * Math.sqrt(0.5);
        Vec2 edge = view.port().toPaper(hole.at().plus(new Vec2(rim, rim)));
        String holes = Annotations.holeWords(use.holes().size(), hole.diameter());
        view.annotate().place(Label.of(edge, Label.Pointer.ARROW, holes).preferring(Spot.ABOVE_RIGHT, Spot.RIGHT));
    }

    private List<Paragraph> words() {
        double across = (use.gaugeX() - use.outline().getWidth()) / 2;
        double along = Math.max(0, (use.gaugeY() - use.outline().getHeight()) / 2);
        List<Paragraph> words = new ArrayList<>();
        words.add(Paragraph.heading(use.plate().mark() + ": "
                + OrderTables.plate(
                        use.plate().material().designation(), use.plate().stockLength())));
        words.add(Paragraph.bullet(use.plate().quantity() + " off in all."));
        use.sections().forEach(s -> words.add(Paragraph.bullet(under(s))));
        words.add(
                Paragraph.bullet("Middle of plate " + Figure.length(-face()) + " inside the string line of its row."));
        words.add(Paragraph.bullet("Grade " + use.plate().material().grade() + "."));
        words.add(Paragraph.bullet(edge("product minimum", anchor.minimumEdge(), across, along)));
        words.add(Paragraph.bullet(edge("1.5 × embedment", 1.5 * anchor.embedment(), across, along)));
        return words;
    }

    private String under(String section) {
        List<PlateStand> stands = use.under(section);
        String places = PlateUse.places(stands);
        return stands.size() + " under " + section + " (" + PlateUse.marks(stands) + ") at "
                + (places.length() <= LONGEST_LIST ? places : "the places that the floor plan marks so") + ".";
    }

    /**
     * What a distance from hole to slab edge asks from the column's face.
     *
     * <p>@source hole to edge = face to edge − (gauge − column)/2, derived here
     */
    private static String edge(String what, double toHole, double across, double along) {
        String sideways = Figure.length(toHole + across);
        String endways = Figure.length(toHole + along);
        String least = sideways.equals(endways) ? sideways : sideways + " across, " + endways + " along";
        return "Upright's face to slab edge for " + what + " (" + Figure.length(toHole) + " from hole): " + least + ".";
    }
}
