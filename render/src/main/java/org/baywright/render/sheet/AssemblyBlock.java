package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.Assembly;
import org.baywright.model.parts.Attached;
import org.baywright.render.dimension.Column;
import org.baywright.render.dimension.Figure;
import org.baywright.render.dimension.Notes;
import org.baywright.render.dimension.Paragraph;
import org.baywright.render.dimension.Row;
import org.baywright.render.dimension.StationRow;
import org.baywright.render.dimension.StationRow.Station;
import org.baywright.render.dimension.Table;
import org.baywright.render.dimension.TablePart;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Text;
import org.baywright.render.paper.Face;
import org.baywright.render.view.Projection;
import org.locationtech.jts.geom.Envelope;

/** The drawing of a member with its plates: each at its distance from the marked end, and its weld. */
final class AssemblyBlock {
    private static final double TEXT = 2.5;
    private static final double GAP = 3;

    /** A line of words over the second view, clear of the break lines of both views. */
    private static final double CAPTION = 6.5;

    private final Assembly assembly;
    private final GridPlaces places;
    private final PieceView view;
    private final double left = MemberBlock.VIEWS + 4;
    private final double right = SheetFrame.room().getWidth() - 4;

    private AssemblyBlock(Assembly assembly, GridPlaces places) {
        this.assembly = assembly;
        this.places = places;
        this.view = PieceView.of(assembly.member(), assembly.welded(), List.of(), right - left);
    }

    static Block of(Assembly assembly, GridPlaces places) {
        return new AssemblyBlock(assembly, places).block();
    }

    private Block block() {
        List<Mark> marks = new ArrayList<>();
        double top = symbols(marks);
        marks.addAll(view.draw(PieceView.SIDE, new Vec2(left, top)));
        double foot = top - view.height(PieceView.SIDE);
        Projection other = other();
        if (isBesides()) {
            marks.add(Text.level(
                    other == PieceView.UPPER
                            ? "From the upper edge, near side at the foot"
                            : "From the lower edge, near side at the top",
                    new Vec2(left, foot - CAPTION + 1),
                    TEXT,
                    Text.Align.LEFT,
                    Layer.LABEL));
            double upper = foot - CAPTION - 1;
            marks.addAll(view.draw(other, new Vec2(left, upper)));
            foot = upper - view.height(other);
        }
        StationRow row = new StationRow(paper(view.datum()), stations(), left - 2, right + 2);
        marks.addAll(row.draw(foot));
        double words = words(marks);
        return new Block(assembly.mark(), SheetFrame.room().getWidth(), Math.max(words, row.depth() - foot), marks);
    }

    private double paper(double station) {
        return left + view.stretch().at(station);
    }

    /** Whether a plate lies on a side, so that the view of the side does not show how far it stands out. */
    private boolean isBesides() {
        Envelope own = view.bounds(PieceView.UPPER);
        double half = assembly.member().solid().profile().width() / 2;
        return own.getMaxY() > half + 1
                || assembly.welded().stream().anyMatch(p -> Math.abs(p.middle().z()) > 1);
    }

    /** The edge on which more plates lie that stand off the middle. */
    private Projection other() {
        double up = assembly.welded().stream()
                .filter(p -> Math.abs(p.middle().z()) > 1)
                .mapToDouble(p -> Math.signum(Math.round(p.middle().y())))
                .sum();
        return up < 0 ? PieceView.LOWER : PieceView.UPPER;
    }

    /** Draws the weld symbols and says where the top of the side view comes to lie. */
    private double symbols(List<Mark> marks) {
        Map<String, List<Attached>> alike = new LinkedHashMap<>();
        assembly.welded()
                .forEach(p -> alike.computeIfAbsent(p.plate().mark(), k -> new ArrayList<>())
                        .add(p));
        List<WeldLanes.Wanted> wanted = alike.values().stream()
                .map(list -> new WeldLanes.Wanted(list.get(0), list.size(), target(list.get(0))))
                .toList();
        WeldLanes lanes = new WeldLanes(wanted, MemberBlock.VIEWS, right + 4);
        double top = -GAP - lanes.height();
        marks.addAll(lanes.draw(top + GAP, below(top)));
        return top;
    }

    private double target(Attached plate) {
        return paper((plate.nearStation() + plate.farStation()) / 2);
    }

    /** Where the arrow to a plate ends: at the member's edge that it lies on, or at its middle. */
    private java.util.function.ToDoubleFunction<Attached> below(double top) {
        double half = assembly.member().solid().profile().depth() / 2;
        return plate -> {
            Vec3 middle = plate.middle();
            double y = plate.isOnABracket() ? middle.y() : Math.max(-half, Math.min(half, middle.y()));
            return view.up(PieceView.SIDE, y, top);
        };
    }

    private List<Station> stations() {
        Map<String, Integer> counts = new LinkedHashMap<>();
        Map<String, Double> places = new LinkedHashMap<>();
        List<Attached> measured =
                assembly.welded().stream().filter(p -> !p.isOnABracket()).toList();
        for (Attached plate : measured) {
            String words = figure(plate.nearStation()) + " " + plate.plate().mark();
            counts.merge(words, 1, Integer::sum);
            places.putIfAbsent(words, plate.nearStation());
        }
        List<Station> stations = new ArrayList<>();
        counts.forEach(
                (words, n) -> stations.add(new Station(paper(places.get(words)), n == 1 ? words : words + " × " + n)));
        stations.add(new Station(paper(view.datum()), "0"));
        double end = view.datum() + assembly.member().solid().stockLength();
        stations.add(new Station(paper(end), figure(end) + " tip"));
        return stations;
    }

    private String figure(double station) {
        return Figure.length(station - view.datum());
    }

    /** Draws the words and the table on the left and says how high they are. */
    private double words(List<Mark> marks) {
        List<Paragraph> words = new ArrayList<>();
        words.add(new Paragraph("", assembly.mark() + "  " + assembly.member().mark() + " with its plates", Face.BOLD));
        words.add(Paragraph.of(assembly.quantity() + " off, " + MemberBlock.kg(assembly.massKg())
                + " kg each without welds: "
                + places.of(assembly) + "."));
        words.add(Paragraph.of(MemberBlock.scaleWords(view)));
        Notes notes = Notes.of(words, MemberBlock.WORDS);
        marks.addAll(notes.draw(new Vec2(0, 0)));
        TablePart table = new Table(
                        List.of(Column.words("Plate"), Column.words("Lies on"), Column.words("From marked end")),
                        rows(),
                        MemberBlock.WORDS)
                .filling()
                .pages(1e6)
                .get(0);
        marks.addAll(table.draw(new Vec2(0, -notes.height() - 1)));
        return notes.height() + 1 + table.height();
    }

    private List<Row> rows() {
        Map<List<String>, List<Double>> alike = new LinkedHashMap<>();
        for (Attached plate : assembly.welded()) {
            boolean onBracket = plate.isOnABracket();
            String where =
                    onBracket ? AttachedWords.onBracket(assembly, plate) : AttachedWords.of(assembly.member(), plate);
            Attached figured = onBracket && plate.isHung() ? assembly.bracketUnder(plate) : plate;
            alike.computeIfAbsent(List.of(plate.plate().mark(), where), k -> new ArrayList<>())
                    .add(figured.nearStation());
        }
        return alike.entrySet().stream()
                .sorted(Comparator.comparingDouble(e -> e.getValue().get(0)))
                .map(e -> Row.of(
                        e.getKey().get(0),
                        e.getKey().get(1),
                        e.getValue().stream().map(this::figure).collect(Collectors.joining(", "))))
                .toList();
    }
}
