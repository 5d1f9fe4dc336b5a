package org.baywright.render.dimension;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.baywright.model.geometry.Vec2;
import org.baywright.render.mark.Arc;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Text;
import org.baywright.render.paper.Face;
import org.baywright.render.paper.Lettering;
import org.baywright.render.paper.Scale;
import org.baywright.render.view.ViewPort;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Envelope;

class AnnotationsTest {
    private static final Envelope FRAME = new Envelope(20, 410, 10, 287);

    private static Annotations over(ViewPort view, Envelope model) {
        Vec2 low = view.toPaper(new Vec2(model.getMinX(), model.getMinY()));
        Vec2 high = view.toPaper(new Vec2(model.getMaxX(), model.getMaxY()));
        return new Annotations(new LabelField(FRAME), view, new Envelope(low.x(), high.x(), low.y(), high.y()));
    }

    private static List<String> words(List<Mark> marks) {
        return marks.stream()
                .filter(m -> m instanceof Text)
                .map(m -> ((Text) m).content())
                .toList();
    }

    /** A view as random as a shed can be: stations anywhere, some very close, all kinds of annotation at once. */
    private static Annotations random(long seed, int n) {
        Random random = new Random(seed);
        ViewPort view = new ViewPort(new Scale(100), new Vec2(0, 0), new Vec2(120, 110));
        Annotations a = over(view, new Envelope(0, 18000, 0, 9000));
        List<Double> xs = new ArrayList<>(List.of(0.0, 18000.0));
        List<Double> ys = new ArrayList<>(List.of(0.0, 9000.0));
        List<Level> levels = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            xs.add(random.nextInt(4) == 0 ? xs.get(i) + 50 : random.nextDouble() * 18000);
            ys.add(random.nextDouble() * 9000);
        }
        for (int i = 0; i < Math.min(n, 7); i++) {
            levels.add(new Level("LEVEL " + i + " (TOP OF RAFTER STEEL)", random.nextDouble() * 9000));
        }
        a.chainBelow(xs, 0).overallBelow(0, 18000, 0).chainLeft(ys, 0).overallLeft(0, 9000, 0);
        a.running(
                Side.ABOVE,
                new Vec2(0, 9000),
                xs.stream().map(x -> new Vec2(x, 9000)).toList());
        a.levels(Side.RIGHT, levels).pitch(new Vec2(0, 6000), new Vec2(9000, 7500));
        a.diagonal("", new Vec2(0, 0), new Vec2(18000, 9000)).diagonal("", new Vec2(18000, 0), new Vec2(0, 9000));
        a.numberedGrid(Side.BELOW, xs.subList(0, 2), 9000);
        for (int i = 0; i < n; i++) {
            a.mark(new Vec2(random.nextDouble() * 18000, random.nextDouble() * 9000), "C" + i + " SHS 100×100×5");
            a.label(new Vec2(random.nextDouble() * 18000, random.nextDouble() * 9000), "two lines", "of words " + i);
        }
        return a;
    }

    @Property(tries = 40)
    void noTextLiesOnTextOrLeavesTheFrame(@ForAll @LongRange(min = 0) long seed, @ForAll @IntRange(max = 25) int n) {
        Overlaps.assertNone(random(seed, n).marks(), FRAME);
    }

    @Property(tries = 20)
    void everyPrintedValueIsOnTheSheetAndIsTheDistance(
            @ForAll @LongRange(min = 0) long seed, @ForAll @IntRange(max = 15) int n) {
        Annotations a = random(seed, n);
        List<String> words = new ArrayList<>(words(a.marks()));
        for (Dimension d : a.dimensions()) {
            assertTrue(words.remove(d.text()), "not printed: " + d);
            String last = d.text().substring(d.text().lastIndexOf(' ') + 1);
            double distance = d.direction().distance(d.from(), d.to());
            assertEquals(distance, Double.parseDouble(last), 0.05 + 1e-6);
        }
    }

    @Property(tries = 5)
    void theSameCallsGiveTheSameMarks(@ForAll @LongRange(min = 0) long seed) {
        assertEquals(random(seed, 20).marks(), random(seed, 20).marks());
    }

    @Test
    void aChainOf200BaysReadsBayByBayWhereThereIsRoomAndAsOneRunWhereThereIsNot() {
        List<Double> frames =
                IntStream.rangeClosed(0, 30).mapToObj(i -> i * 6000.0).toList();
        ViewPort roomy = new ViewPort(new Scale(500), new Vec2(0, 0), new Vec2(40, 150));
        Annotations apart = over(roomy, new Envelope(0, 180000, 0, 5000)).chainBelow(frames, 0);
        assertEquals(30, apart.dimensions().size());
        List<Double> many =
                IntStream.rangeClosed(0, 200).mapToObj(i -> i * 6000.0).toList();
        ViewPort tight = new ViewPort(new Scale(5000), new Vec2(0, 0), new Vec2(80, 150));
        Annotations run = over(tight, new Envelope(0, 1200000, 0, 5000)).chainBelow(many, 0);
        assertEquals(List.of("200 × 6000 = 1200000"), words(run.marks()));
    }

    @Test
    void theLongestShedWithUnevenBaysFitsOneRowOfEachKind() {
        List<Double> frames = IntStream.rangeClosed(0, 200)
                .mapToObj(i -> i * 7000.0 + i % 7 * 300)
                .toList();
        ViewPort view = new ViewPort(new Scale(5000), new Vec2(0, 0), new Vec2(70, 150));
        Annotations a = over(view, new Envelope(0, 1401500, 0, 5000));
        a.chainBelow(frames, 0).overallBelow(frames.get(0), frames.get(200), 0);
        a.running(
                Side.ABOVE,
                new Vec2(0, 5000),
                frames.stream().map(x -> new Vec2(x, 5000)).toList());
        assertEquals(200 + 1 + 200, a.dimensions().size());
        Overlaps.assertNone(a.marks(), FRAME);
    }

    @Test
    void rowsShareALineOnlyWhereTheyDoNotMeet() {
        ViewPort view = new ViewPort(new Scale(100), new Vec2(0, 0), new Vec2(120, 150));
        Annotations a = over(view, new Envelope(0, 20000, 0, 5000));
        a.overallBelow(0, 3000, 0).overallBelow(0, 12000, 0).overallBelow(14000, 20000, 0);
        List<Double> heights = a.marks().stream()
                .filter(m -> m instanceof Text)
                .map(m -> ((Text) m).at().y())
                .toList();
        assertEquals(Drafting.ROW, heights.get(0) - heights.get(1), 1e-9);
        assertEquals(heights.get(0), heights.get(2), 1e-9);
    }

    @Test
    void anOverallDimensionStandsOutsideItsChainAndIsLeftOutWhenTheChainSaysIt() {
        ViewPort view = new ViewPort(new Scale(100), new Vec2(0, 0), new Vec2(120, 150));
        Annotations a = over(view, new Envelope(0, 12000, 0, 5000));
        a.chainWithOverall(Side.BELOW, List.of(new Vec2(0, 0), new Vec2(6000, 0), new Vec2(12000, 0)));
        a.chainWithOverall(Side.LEFT, List.of(new Vec2(0, 0), new Vec2(0, 5000)));
        assertEquals(List.of("6000", "6000", "12000", "5000"), words(a.marks()));
        List<Double> heights = a.marks().stream()
                .filter(m -> m instanceof Text)
                .map(m -> ((Text) m).at().y())
                .toList();
        assertEquals(Drafting.ROW, heights.get(0) - heights.get(2), 1e-9);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 5, 10, 37, 60})
    void gridBubblesThinOutUntilTheyClear(int lines) {
        ViewPort view = new ViewPort(new Scale(1000), new Vec2(0, 0), new Vec2(60, 150));
        List<Double> at =
                IntStream.rangeClosed(0, lines).mapToObj(i -> i * 5000.0).toList();
        Annotations a = over(view, new Envelope(0, lines * 5000.0, 0, 5000)).numberedGrid(Side.BELOW, at, 5000);
        List<String> names = words(a.marks());
        assertEquals("1", names.get(0));
        assertEquals(Integer.toString(lines + 1), names.get(names.size() - 1));
        List<Vec2> centres = a.marks().stream()
                .filter(m -> m instanceof Arc)
                .map(m -> ((Arc) m).centre())
                .toList();
        assertEquals(names.size(), centres.size());
        for (int i = 1; i < centres.size(); i++) {
            assertTrue(centres.get(i).x() - centres.get(i - 1).x() > 8, "circles touch at " + centres.get(i));
        }
        Overlaps.assertNone(a.marks(), FRAME);
    }

    @Test
    void aDiameterIsPrintedInTheTypefaceItself() {
        String words = Annotations.holeWords(4, 22);
        assertEquals("4 holes ⌀22", words);
        assertEquals(words, Lettering.printable(words, Face.REGULAR));
    }

    @Test
    void aScaleBarIsTrueToScale() {
        ScaleBar bar = new ScaleBar(new Scale(100), 80);
        assertEquals(1000, bar.divisionMm());
        assertEquals(50, bar.length());
        assertEquals(List.of("0", "1", "2", "3", "4", "5 m"), words(bar.draw(new Vec2(0, 0))));
    }
}
