package org.baywright.render.sheet;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.baywright.model.cladding.Building;
import org.baywright.model.cladding.Cladding;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.Definitions;
import org.baywright.model.definition.LeanTo;
import org.baywright.model.definition.RoofShape;
import org.baywright.model.definition.Seeds;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Shed;
import org.baywright.model.takeoff.Bill;
import org.baywright.render.dimension.Dimension;
import org.baywright.render.dimension.Figure;
import org.baywright.render.dimension.TurnedBox;
import org.baywright.render.mark.Arc;
import org.baywright.render.mark.Bounds;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Text;
import org.baywright.render.output.PdfWriter;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** Whole sets of drawings over random valid sheds. */
class SheetsPropertyTest {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    /** Height of a capital that can be read on a printed A3. @source ISO 3098 nominal sizes, trade minimum 2.5 */
    private static final double LEAST_TEXT = 2.5;

    /** Radius over that of the largest hole in a drawing of an end or a section. Millimetres of paper. */
    private static final double SMALLEST_BUBBLE = 3;

    @Provide
    Arbitrary<Definition> sheds() {
        return Definitions.valid();
    }

    /** Sheds with all that goes on a frame. */
    @Provide
    Arbitrary<Definition> closed() {
        return Definitions.clad();
    }

    private static List<Draft> drafts(Shed shed) {
        return DrawingSet.drafts(new Building(shed, Cladding.of(shed)), Bill.of(shed));
    }

    private static List<Text> texts(List<Mark> marks) {
        return marks.stream().filter(m -> m instanceof Text).map(m -> (Text) m).toList();
    }

    @Property(tries = 25, seed = Seeds.SHEDS)
    void noTwoTextsOverlapAndNoneLeavesTheFrame(@ForAll("sheds") Definition definition) {
        Shed shed = Shed.of(definition);
        Bill bill = Bill.of(shed);
        List<Sheet> drawings =
                DrawingSet.of(new Building(shed, Cladding.of(shed)), bill).sheets();
        drawings.forEach(SheetsPropertyTest::assertReadable);
        drawings.forEach(SheetsPropertyTest::assertBubblesClear);
        OrderSet.of(new Building(shed, Cladding.of(shed)), bill).sheets().forEach(SheetsPropertyTest::assertReadable);
    }

    @Property(tries = 25, seed = Seeds.SHEDS)
    void closedShedsCanBeReadToo(@ForAll("closed") Definition definition) {
        noTwoTextsOverlapAndNoneLeavesTheFrame(definition);
    }

    @Property(tries = 12, seed = Seeds.SHEDS)
    void draftsOfClosedShedsStayAboveTheTitleBlock(@ForAll("closed") Definition definition) {
        draftsStayAboveTheTitleBlock(definition);
    }

    @Property(tries = 12, seed = Seeds.SHEDS)
    void sheetsOfClosedShedsShowTheFiguresOfTheDefinition(@ForAll("closed") Definition definition) {
        sheetsShowTheFiguresOfTheDefinition(definition);
    }

    @Property(tries = 3, seed = Seeds.SHEDS)
    void twoRunsOverClosedShedsGiveTheSameBytes(@ForAll("closed") Definition definition) throws IOException {
        twoRunsGiveTheSameBytes(definition);
    }

    static void assertReadable(Sheet sheet) {
        Envelope paper = new Envelope(0, sheet.paper().width(), 0, sheet.paper().height());
        List<Text> texts = texts(sheet.marks());
        List<Geometry> boxes =
                texts.stream().map(t -> polygon(Bounds.corners(t))).toList();
        for (int i = 0; i < boxes.size(); i++) {
            Text text = texts.get(i);
            assertTrue(text.height() >= LEAST_TEXT, () -> sheet.number() + " too small: " + text);
            assertTrue(paper.covers(boxes.get(i).getEnvelopeInternal()), () -> sheet.number() + " off: " + text);
            for (int j = 0; j < i; j++) {
                boolean near = boxes.get(i)
                        .getEnvelopeInternal()
                        .intersects(boxes.get(j).getEnvelopeInternal());
                if (near && boxes.get(i).intersection(boxes.get(j)).getArea() > 1e-3) {
                    throw new AssertionError(sheet.number() + ": '" + text.content() + "' on '"
                            + texts.get(j).content() + "'");
                }
            }
        }
    }

    /** Bubbles of grid lines and of details hold their own words and cut no others. */
    static void assertBubblesClear(Sheet sheet) {
        List<Geometry> bubbles = sheet.marks().stream()
                .filter(m -> m instanceof Arc arc && arc.sweepDeg() == 360 && arc.radius() >= SMALLEST_BUBBLE)
                .map(m -> disc((Arc) m))
                .toList();
        for (Text text : texts(sheet.marks())) {
            Geometry box = polygon(Bounds.corners(text));
            for (Geometry bubble : bubbles) {
                double in = bubble.intersection(box).getArea();
                assertTrue(
                        in < 0.02 || in > 0.9 * box.getArea(),
                        () -> sheet.number() + ": '" + text.content() + "' is cut by a bubble");
            }
        }
    }

    private static Geometry disc(Arc circle) {
        Coordinate centre = new Coordinate(circle.centre().x(), circle.centre().y());
        return GEOMETRY.createPoint(centre).buffer(circle.radius(), 32);
    }

    private static Geometry polygon(List<Vec2> corners) {
        Coordinate[] ring = new Coordinate[corners.size() + 1];
        for (int i = 0; i < ring.length; i++) {
            Vec2 c = corners.get(i % corners.size());
            ring[i] = new Coordinate(c.x(), c.y());
        }
        return GEOMETRY.createPolygon(ring);
    }

    @Property(tries = 20, seed = Seeds.SHEDS)
    void draftsStayAboveTheTitleBlock(@ForAll("sheds") Definition definition) {
        Envelope room = SheetFrame.aboveBand();
        for (Draft draft : drafts(Shed.of(definition))) {
            for (Text text : texts(draft.marks())) {
                assertTrue(
                        room.covers(TurnedBox.of(text).envelope()),
                        () -> draft.number() + " text on title block or frame: " + text);
            }
        }
    }

    @Property(tries = 20, seed = Seeds.SHEDS)
    void everyMarkIsDrawnAndListed(@ForAll("sheds") Definition definition) {
        Shed shed = Shed.of(definition);
        Set<String> drawn = new HashSet<>();
        Set<String> written = new HashSet<>();
        for (Draft draft : drafts(shed)) {
            draft.marks().forEach(m -> drawn.add(m.part()));
            if (draft.number().startsWith("S8")) {
                texts(draft.marks()).forEach(t -> written.add(t.content()));
            }
        }
        Set<String> marks = shed.parts().stream().map(Part::mark).collect(Collectors.toCollection(TreeSet::new));
        assertTrue(drawn.containsAll(marks), () -> "not drawn: " + minus(marks, drawn));
        assertTrue(written.containsAll(marks), () -> "not listed: " + minus(marks, written));
    }

    private static Set<String> minus(Set<String> all, Set<String> some) {
        Set<String> left = new TreeSet<>(all);
        left.removeAll(some);
        return left;
    }

    /** Each printed dimension is among the sheet's texts, and its figure is the distance between its two points. */
    @Property(tries = 20, seed = Seeds.SHEDS)
    void printedDimensionsEqualTheDistanceOfTheirPoints(@ForAll("sheds") Definition definition) {
        for (Draft draft : drafts(Shed.of(definition))) {
            Set<String> words = texts(draft.marks()).stream().map(Text::content).collect(Collectors.toSet());
            for (Dimension dimension : draft.dimensions()) {
                double distance = switch (dimension.direction()) {
                    case HORIZONTAL ->
                        Math.abs(dimension.to().x() - dimension.from().x());
                    case VERTICAL ->
                        Math.abs(dimension.to().y() - dimension.from().y());
                    case ALIGNED -> dimension.from().distance(dimension.to());
                };
                String figure = dimension.text().substring(dimension.text().lastIndexOf(' ') + 1);
                assertEquals(distance, Math.abs(Double.parseDouble(figure)), 0.0501, draft.number());
                assertTrue(
                        words.stream().anyMatch(w -> w.equals(dimension.text()) || w.endsWith(" " + dimension.text())),
                        () -> draft.number() + " does not print " + dimension.text());
            }
        }
    }

    /** Across a section, dimensions end on faces or middles of columns that are there, as their solids say. */
    @Property(tries = 20, seed = Seeds.SHEDS)
    void sectionsMeasureBetweenFacesAndMiddlesOfColumns(@ForAll("sheds") Definition definition) {
        Shed shed = Shed.of(definition);
        List<Double> stations = shed.parts().stream()
                .filter(p -> p.kind() == PartKind.COLUMN || p.kind() == PartKind.LEAN_TO_COLUMN)
                .flatMap(p -> p.places().stream().flatMap(place -> {
                    double middle = place.placement().origin().x();
                    double half = p.solid().profile().depth() / 2;
                    return Stream.of(middle - half, middle, middle + half);
                }))
                .distinct()
                .toList();
        for (Draft draft : drafts(shed)) {
            // Joint details, which share a sheet with a section, measure plates and holes instead.
            if (draft.number().startsWith("S4") && draft.scale().equals("1:100 @ A3")) {
                for (Dimension dimension : draft.dimensions()) {
                    for (Vec2 end : List.of(dimension.from(), dimension.to())) {
                        assertTrue(
                                stations.stream().anyMatch(x -> Math.abs(x - end.x()) < 1e-6),
                                () -> draft.number() + " measures to nothing at " + end);
                    }
                }
            }
        }
    }

    /** The figures that the definition itself gives are on the sheets that should show them. */
    @Property(tries = 20, seed = Seeds.SHEDS)
    void sheetsShowTheFiguresOfTheDefinition(@ForAll("sheds") Definition definition) {
        Shed shed = Shed.of(definition);
        List<Draft> drafts = drafts(shed);
        String span = Figure.length(definition.shape().span());
        assertTrue(printed(drafts, "S2").contains(span), "span on the plan");
        assertTrue(printed(drafts, "S4").contains(span), "span on a section");
        double slope = Math.tan(Math.toRadians(definition.shape().roofPitchDeg()));
        boolean gable = definition.shape().roofShape() == RoofShape.GABLE;
        double run = gable ? definition.shape().span() / 2 : definition.shape().span();
        String eave = Figure.level(definition.shape().eaveHeight());
        String apex = Figure.level(definition.shape().eaveHeight() + run * slope);
        for (String number : List.of("S3", "S4")) {
            assertTrue(printed(drafts, number).containsAll(List.of(eave, apex, "±0")), "levels on " + number);
        }
        for (LeanTo leanTo : definition.leanTos()) {
            boolean alone = definition.leanTos().stream()
                            .filter(l -> l.side() == leanTo.side())
                            .count()
                    == 1;
            // Two on one side are dimensioned as a chain from the nearer to the further line.
            assertTrue(
                    !alone || printed(drafts, "S2").contains(Figure.length(leanTo.width())),
                    () -> leanTo + " on the plan");
        }
    }

    private static Set<String> printed(List<Draft> drafts, String series) {
        return drafts.stream()
                .filter(d -> d.number().startsWith(series))
                .flatMap(d -> texts(d.marks()).stream())
                .map(Text::content)
                .collect(Collectors.toSet());
    }

    @Property(tries = 5, seed = Seeds.SHEDS)
    void twoRunsGiveTheSameBytes(@ForAll("sheds") Definition definition) throws IOException {
        assertArrayEquals(pdf(definition), pdf(definition));
    }

    private static byte[] pdf(Definition definition) throws IOException {
        Shed shed = Shed.of(definition);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        PdfWriter.write(DrawingSet.of(new Building(shed, Cladding.of(shed)), Bill.of(shed)), bytes);
        return bytes.toByteArray();
    }
}
