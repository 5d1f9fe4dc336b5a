package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.baywright.model.geometry.Solid;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.parts.Assembly;
import org.baywright.model.parts.CutForm;
import org.baywright.model.parts.JointHole;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Place;
import org.baywright.model.parts.Turnbuckle;
import org.baywright.render.dimension.Figure;
import org.baywright.render.dimension.Notes;
import org.baywright.render.dimension.Paragraph;
import org.baywright.render.dimension.StationRow;
import org.baywright.render.dimension.StationRow.Station;
import org.baywright.render.mark.Arc;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Stroke;
import org.baywright.render.paper.Face;
import org.baywright.render.paper.Pen;

/** The drawing of a member as it is cut: its side, its end, its cuts and holes from the marked end. */
final class MemberBlock {
    /** Room for words on the left, mm of paper. */
    static final double WORDS = 112;

    /** Where views begin. */
    static final double VIEWS = 122;

    /** Room for the end section before the side view. */
    private static final double SECTION = 34;

    private static final double SECTION_HEIGHT = 30;

    /** Above a view. */
    private static final double ABOVE = 3;

    private final Part member;
    private final List<Assembly> assemblies;
    private final List<JointHole> holes;
    private final int unlike;
    private final PieceView view;
    private final double left = VIEWS + SECTION + 8;
    private final double right = SheetFrame.room().getWidth() - 4;

    private MemberBlock(Part member, List<Assembly> assemblies, List<JointHole> holes, int unlike) {
        this.member = member;
        this.assemblies = assemblies;
        this.holes = holes;
        this.unlike = unlike;
        List<Double> kept = new ArrayList<>(member.punched());
        holes.forEach(h -> kept.add(h.at().x()));
        this.view = PieceView.of(member, List.of(), kept, right - left);
    }

    /** So many pieces of the mark lie on other cleats than the first, which is drawn. */
    static Block of(Part member, List<Assembly> assemblies, List<JointHole> holes, int unlike) {
        return new MemberBlock(member, assemblies, holes, unlike).block();
    }

    private Block block() {
        List<Mark> marks = new ArrayList<>();
        Notes notes = Notes.of(words(), WORDS);
        marks.addAll(notes.draw(new Vec2(0, 0)));
        marks.addAll(EndSection.draw(member, VIEWS, SECTION, -ABOVE, SECTION_HEIGHT));
        double top = -ABOVE;
        marks.addAll(view.draw(PieceView.SIDE, new Vec2(left, top)));
        marks.addAll(crosses(top));
        double foot = top - view.height(PieceView.SIDE);
        StationRow row = new StationRow(paper(view.datum()), stations(), left - 2, right + 2);
        marks.addAll(row.draw(foot));
        double height = Math.max(Math.max(notes.height(), SECTION_HEIGHT + ABOVE), -foot + row.depth());
        return new Block(member.mark(), SheetFrame.room().getWidth(), height, marks);
    }

    private double paper(double station) {
        return left + view.stretch().at(station);
    }

    private Station station(double at, String words) {
        String figure = Figure.length(at - view.datum());
        return new Station(paper(at), words.isEmpty() ? figure : figure + " " + words);
    }

    /** Both edges at both ends, then the holes. */
    private List<Station> stations() {
        Solid solid = member.solid();
        double high =
                solid.profile().outline().stream().mapToDouble(Vec2::x).max().orElseThrow();
        double low =
                solid.profile().outline().stream().mapToDouble(Vec2::x).min().orElseThrow();
        List<Station> stations = new ArrayList<>();
        edges(stations, solid.startStation(new Vec2(high, 0)), solid.startStation(new Vec2(low, 0)));
        edges(stations, solid.endStation(new Vec2(high, 0)), solid.endStation(new Vec2(low, 0)));
        if (holes.isEmpty()) {
            member.punched().forEach(p -> stations.add(station(p, "")));
        }
        holes.stream()
                .map(h -> Math.round(h.at().x() * 10) / 10.0)
                .distinct()
                .forEach(x -> stations.add(station(x, "")));
        member.punched().stream()
                .filter(p -> !holes.isEmpty() && holes.stream().noneMatch(h -> Math.abs(h.at().x() - p) < 0.1))
                .forEach(p -> stations.add(station(p, "")));
        return stations;
    }

    private void edges(List<Station> stations, double upper, double lower) {
        if (Math.abs(upper - lower) < 0.05) {
            stations.add(station(upper, ""));
        } else {
            stations.add(station(upper, "upper edge"));
            stations.add(station(lower, "lower edge"));
        }
    }

    /** A cross at each hole that is seen, and an upright line where a pair is punched at the gauge of the section. */
    private List<Mark> crosses(double top) {
        List<Mark> marks = new ArrayList<>();
        double foot = top - view.height(PieceView.SIDE);
        for (double p : member.punched()) {
            marks.add(line(new Vec2(paper(p), top + 1), new Vec2(paper(p), foot - 1)));
        }
        for (JointHole hole : holes) {
            double x = paper(hole.at().x());
            double y = view.up(PieceView.SIDE, hole.at().y(), top);
            if (!hole.throughDepth()) {
                marks.add(Arc.circle(
                        new Vec2(x, y),
                        view.stretch().scale().toPaper(hole.diameter() / 2),
                        Pen.DIMENSION,
                        Layer.ANCHOR,
                        member.mark()));
                marks.add(line(new Vec2(x - 1, y), new Vec2(x + 1, y)));
                marks.add(line(new Vec2(x, y - 1), new Vec2(x, y + 1)));
            } else {
                marks.add(line(new Vec2(x, top + 1), new Vec2(x, foot - 1)));
            }
        }
        return marks;
    }

    private static Mark line(Vec2 a, Vec2 b) {
        return Stroke.line(a, b, Pen.DIMENSION, Layer.ANCHOR);
    }

    private List<Paragraph> words() {
        List<Paragraph> words = new ArrayList<>();
        words.add(new Paragraph(
                "",
                member.mark() + "  " + member.kind().label() + "  "
                        + member.material().description(),
                Face.BOLD));
        words.add(Paragraph.of(member.quantity() + " off, " + kg(member.massKg()) + " kg each. Grade "
                + member.material().grade() + "."));
        words.add(Paragraph.of(lengths()));
        words.add(Paragraph.of(holeWords()));
        if (unlike > 0) {
            words.add(Paragraph.of(
                    "The piece at frame or bay " + member.places().get(0).frame() + " is drawn; " + unlike
                            + " of this mark lie on other cleats: mark their holes from the cleats before drilling."));
        }
        words.add(Paragraph.of(use()));
        words.add(Paragraph.of(scaleWords(view)));
        return words;
    }

    private String lengths() {
        if (member.cutForm() == CutForm.SQUARE) {
            return "Length " + Figure.length(member.stockLength()) + ", both ends square.";
        }
        return "Tip to tip " + Figure.length(member.stockLength()) + ", long edge " + Figure.length(member.longEdge())
                + ", short edge " + Figure.length(member.shortEdge()) + ". Marked end "
                + cut(member.cutADeg(), member.solid().startSlope() < 0) + "; far end "
                + cut(member.cutBDeg(), member.solid().endSlope() > 0) + ".";
    }

    /** The scale of a view and whether its length is true. */
    static String scaleWords(PieceView view) {
        return "Side " + view.stretch().scale() + " @ A3"
                + (view.stretch().breaks().isEmpty() ? "." : "; not to scale along where broken, figures true.");
    }

    static String kg(double mass) {
        return String.format(Locale.ROOT, "%.1f", mass);
    }

    private static String cut(double deg, boolean longAbove) {
        return deg < 0.05
                ? "square"
                : Figure.angle(deg) + " from square, long point on the " + (longAbove ? "upper" : "lower") + " edge";
    }

    private String holeWords() {
        if (!holes.isEmpty()) {
            return "Holes to suit the cleats it is bolted to: "
                    + holes.stream().map(this::hole).distinct().collect(Collectors.joining("; ")) + "."
                    + (member.punched().size() > 0 ? " Other stations: a pair at the same gauge." : "");
        }
        if (member.isRod()) {
            Turnbuckle turnbuckle = Turnbuckle.on(member);
            return "Marked end on its lug. Far end threaded " + turnbuckle.size() + " for "
                    + Figure.length(turnbuckle.thread())
                    + ", left-hand on the longer rod of a brace, right-hand on the shorter: a turnbuckle joins them.";
        }
        return member.punched().isEmpty()
                ? "No holes in the model."
                : "Each station a pair of ⌀18 holes at the gauge of the section.";
    }

    private String hole(JointHole hole) {
        double off = hole.off();
        String aside =
                hole.throughDepth() ? (off > 0 ? " to the near side" : " to the far side") : off > 0 ? " up" : " down";
        return "⌀" + Figure.length(hole.diameter()) + " through the " + (hole.throughDepth() ? "depth" : "width")
                + (off == 0 ? " on the middle line" : ", " + Figure.length(Math.abs(off)) + aside);
    }

    private String use() {
        List<Assembly> made =
                assemblies.stream().filter(a -> !a.welded().isEmpty()).toList();
        if (member.kind().isWeldedOn()) {
            return "Welded into " + made.stream().map(Assembly::mark).collect(Collectors.joining(", ")) + ", at "
                    + places(member.kind(), member.places()) + ".";
        }
        if (made.isEmpty()) {
            return (member.kind() == PartKind.LIFTING_BEAM
                            ? "No bolts: welded to its plates on site, or as the engineer shows. "
                            : "Nothing welded to it; goes up as it is. ")
                    + places(member.kind(), member.places()) + ".";
        }
        return "Becomes "
                + made.stream()
                        .map(a -> a.mark() + (a.quantity() == 1 ? "" : " × " + a.quantity()))
                        .collect(Collectors.joining(", "))
                + plain()
                + ".";
    }

    private String plain() {
        int bare = assemblies.stream()
                .filter(a -> a.welded().isEmpty())
                .mapToInt(Assembly::quantity)
                .sum();
        return bare == 0 ? "" : "; " + bare + " without plates";
    }

    /** The frames or bays it goes to. */
    static String places(PartKind kind, List<Place> places) {
        if (kind.isOfFrame()) {
            return places.stream()
                    .map(p -> "frame " + p.frame() + " " + p.side().name().toLowerCase(Locale.ROOT))
                    .distinct()
                    .collect(Collectors.joining(", "));
        }
        if (kind == PartKind.BRIDGING) {
            return "In bays or at end frames " + runs(places.stream());
        }
        Predicate<Place> isInBay = place -> kind != PartKind.FLY_BRACE && GridPlaces.isInBay(place.placement());
        String bays = runs(places.stream().filter(isInBay));
        String frames = runs(places.stream().filter(isInBay.negate()));
        if (frames.isEmpty()) {
            return "In bays " + bays;
        }
        return "At frames " + frames + (bays.isEmpty() ? "" : ", in bays " + bays);
    }

    private static String runs(Stream<Place> places) {
        return PlateUse.runs(List.copyOf(places.map(Place::frame).collect(Collectors.toCollection(TreeSet::new))));
    }
}
