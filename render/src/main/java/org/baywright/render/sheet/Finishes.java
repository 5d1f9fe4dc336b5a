package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.baywright.model.cladding.Building;
import org.baywright.model.cladding.Flashing;
import org.baywright.model.cladding.GutterRun;
import org.baywright.model.cladding.Surface;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.setout.OpeningPlace;
import org.baywright.render.dimension.Annotations;
import org.baywright.render.mark.Fill;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Text;
import org.baywright.render.paper.Face;
import org.baywright.render.paper.Lettering;
import org.baywright.render.view.HiddenLines;
import org.baywright.render.view.Item;
import org.baywright.render.view.Projection;
import org.baywright.render.view.ThinLine;
import org.baywright.render.view.ViewLine;
import org.locationtech.jts.geom.Envelope;

/**
 * Names what is seen of the envelope in an elevation: each opening by its tag, and once each the sheets, gutter, ridge
 * and barge. What they are made of is in the {@link FinishesKey}.
 *
 * @param building what is seen
 * @param blinds what hides other things
 * @param view from where
 * @param window what is shown of it
 */
record Finishes(Building building, List<Item> blinds, Projection view, Envelope window) {
    private static final double FACING = 0.9;

    /** A roof slope that leans this much towards the eye is seen. */
    private static final double LEANING = 0.03;

    /** Where on a surface its name may point, the best first. */
    private static final double[] ALONG = {0.86, 0.93, 0.7, 0.5, 0.3, 0.1};

    private static final double[] UP = {0.62, 0.9, 0.3};
    private static final double GUTTER_AT = 0.3;
    private static final double TEXT = 2.5;
    private static final double LINE = 1.62 * TEXT;

    /** From a wall's string line to where nothing of its own closes a view of an opening. */
    private static final double BEFORE_LEAF = 300;

    /** White round a tag. */
    private static final double ROUND = 0.8;

    void name(PlacedView placed) {
        if (!building.shed().definition().envelope().isFull()) {
            return;
        }
        Annotations annotate = placed.annotate();
        seen(building.shed().openings().stream()
                        .filter(o -> !o.isWholeBay())
                        .filter(this::faces)
                        .toList())
                .forEach(o -> opening(placed, o));
        surface(Surface.Role.WALL, FACING).ifPresent(at -> annotate.note(at, "Wall sheets"));
        surface(Surface.Role.ROOF, LEANING).ifPresent(at -> annotate.note(at, "Roof sheets"));
        gutter().ifPresent(at -> annotate.note(at, "Gutter"));
        flashing(annotate, isEnd() ? Flashing.Kind.BARGE : Flashing.Kind.RIDGE);
    }

    private boolean isEnd() {
        return Math.abs(view.towards().y()) > FACING;
    }

    /** Whether an opening is in a wall that faces the eye, and in the window. */
    private boolean faces(OpeningPlace o) {
        Vec2 at = middle(o);
        return o.face().axes().width().dot(view.towards()) > FACING && window.contains(at.x(), at.y());
    }

    /** The openings whose middle nothing else stands before: not those in a wall behind another. */
    private List<OpeningPlace> seen(List<OpeningPlace> openings) {
        List<ThinLine> specks = new ArrayList<>();
        for (OpeningPlace o : openings) {
            Vec3 before = o.face().toWorld((o.left() + o.right()) / 2, (o.sill() + o.head()) / 2, BEFORE_LEAF);
            specks.add(new ThinLine(before, before.plus(view.right()), o.tag()));
        }
        Set<String> tags = HiddenLines.visible(List.of(), blinds, specks, view).stream()
                .map(ViewLine::part)
                .collect(Collectors.toSet());
        return openings.stream().filter(o -> tags.contains(o.tag())).toList();
    }

    private Vec2 middle(OpeningPlace o) {
        return view.flat(o.face().toWorld((o.left() + o.right()) / 2, (o.sill() + o.head()) / 2, 0));
    }

    /** The tag of an opening in its middle, with its size where that has room, or else on a leader. */
    private void opening(PlacedView placed, OpeningPlace o) {
        String name = o.tag() + " " + o.opening().type().label().toLowerCase(Locale.ROOT);
        Stream.of(List.of(name, FinishesKey.size(o)), List.of(name), List.of(o.tag()))
                .filter(words -> hasRoom(placed, o, words))
                .findFirst()
                .ifPresentOrElse(
                        words -> placed.draw(tag(placed.port().toPaper(middle(o)), words)),
                        () -> placed.annotate().note(middle(o), o.tag()));
    }

    private boolean hasRoom(PlacedView placed, OpeningPlace o, List<String> words) {
        double width = placed.port().scale().toPaper(o.width());
        double height = placed.port().scale().toPaper(o.head() - o.sill());
        Vec2 at = placed.port().toPaper(middle(o));
        Envelope tag = new Envelope(at.x(), at.x(), at.y(), at.y());
        tag.expandBy(wide(words) / 2 + ROUND, words.size() * LINE / 2);
        return tag.getWidth() < width && tag.getHeight() + ROUND < height && placed.isFree(tag);
    }

    private static double wide(List<String> words) {
        return words.stream()
                .mapToDouble(w -> Lettering.width(w, TEXT, Face.REGULAR))
                .max()
                .orElse(0);
    }

    private static List<Mark> tag(Vec2 middle, List<String> words) {
        double half = words.size() * LINE / 2;
        double aside = wide(words) / 2 + ROUND;
        List<Mark> marks = new ArrayList<>();
        marks.add(new Fill(
                List.of(List.of(
                        middle.plus(new Vec2(-aside, -half)),
                        middle.plus(new Vec2(aside, -half)),
                        middle.plus(new Vec2(aside, half)),
                        middle.plus(new Vec2(-aside, half)))),
                1,
                Layer.LABEL,
                ""));
        double y = middle.y() + half - Lettering.ascent(TEXT, Face.REGULAR);
        for (String line : words) {
            marks.add(Text.level(line, new Vec2(middle.x(), y), TEXT, Text.Align.CENTRE, Layer.LABEL));
            y -= LINE;
        }
        return marks;
    }

    /** A place that is seen on the largest surface of a role that faces the eye. */
    private Optional<Vec2> surface(Surface.Role role, double facing) {
        return building.cladding().surfaces(role).stream()
                .filter(s -> s.axes().width().dot(view.towards()) > facing)
                .filter(s -> Math.abs(s.axes().along().dot(view.right())) > FACING)
                .sorted((a, b) -> Double.compare(b.grossM2(), a.grossM2()))
                .flatMap(s -> seen(s).stream())
                .findFirst();
    }

    /** The first of the places on a surface that nothing stands before. */
    private Optional<Vec2> seen(Surface surface) {
        List<Vec3> places = new ArrayList<>();
        List<ThinLine> specks = new ArrayList<>();
        for (double up : UP) {
            for (double along : ALONG) {
                Vec2 at = at(surface, along, up);
                Vec3 place =
                        surface.axes().toWorld(at.x(), at.y(), surface.profile().depth());
                Vec2 flat = view.flat(place);
                if (isClosed(surface, at) && window.contains(flat.x(), flat.y())) {
                    specks.add(new ThinLine(place, place.plus(view.right()), String.valueOf(places.size())));
                    places.add(place);
                }
            }
        }
        return HiddenLines.visible(List.of(), blinds, specks, view).stream()
                .map(ViewLine::part)
                .map(Integer::valueOf)
                .min(Integer::compare)
                .map(places::get)
                .map(view::flat);
    }

    private static Vec2 at(Surface surface, double along, double up) {
        Vec2 low = surface.outline().get(0);
        double width = surface.outline().get(1).x() - low.x();
        double height = surface.outline().get(surface.outline().size() - 1).y() - low.y();
        return new Vec2(low.x() + along * width, low.y() + up * height);
    }

    private static boolean isClosed(Surface surface, Vec2 at) {
        return surface.holes().stream()
                .noneMatch(hole -> hole.get(0).x() <= at.x()
                        && at.x() <= hole.get(1).x()
                        && hole.get(0).y() <= at.y()
                        && at.y() <= hole.get(2).y());
    }

    private Optional<Vec2> gutter() {
        return building.cladding().gutters().stream()
                .filter(run -> new Vec3(-run.slope().line().inward(), 0, 0).dot(view.towards()) > FACING)
                .map(this::place)
                .filter(at -> window.contains(at.x(), at.y()))
                .findFirst();
    }

    private Vec2 place(GutterRun run) {
        return view.flat(run.from().plus(run.to().minus(run.from()).times(GUTTER_AT)));
    }

    private void flashing(Annotations annotate, Flashing.Kind kind) {
        building.cladding().flashings().stream()
                .filter(f -> f.kind() == kind)
                .findFirst()
                .ifPresent(f -> {
                    Flashing.Run run = f.runs().get(0);
                    Vec2 at = view.flat(run.from().plus(run.to()).times(0.5));
                    if (window.contains(at.x(), at.y())) {
                        String name = f.kind().label();
                        annotate.note(
                                at, name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1) + " " + f.mark());
                    }
                });
    }
}
