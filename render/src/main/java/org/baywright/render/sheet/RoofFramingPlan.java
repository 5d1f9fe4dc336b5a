package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.baywright.model.definition.Purlins;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PartKind;
import org.baywright.model.parts.Shed;
import org.baywright.render.dimension.Figure;
import org.baywright.render.dimension.Label;
import org.baywright.render.dimension.Paragraph;
import org.baywright.render.dimension.Spot;
import org.baywright.render.mark.Fill;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Stroke;
import org.baywright.render.paper.Pen;
import org.baywright.render.view.Silhouette;
import org.baywright.render.view.ViewLine;
import org.locationtech.jts.geom.Envelope;

/**
 * The roof framing plan: rafters in grey, each purlin as one line, its laps thick, bridging thin, bracing heavy, and
 * the spacing of the purlins measured up each slope, which a plan cannot show true.
 */
final class RoofFramingPlan {
    private static final Set<PartKind> RAFTERS = EnumSet.of(PartKind.RAFTER, PartKind.LEAN_TO_RAFTER);
    private static final Set<PartKind> BRACING = EnumSet.of(PartKind.BRACE, PartKind.STRUT);
    private static final double RAFTER_GREY = 0.82;

    /** Where across the building a braced bay is named: clear of the middles of its crosses. */
    private static final double BESIDE_CROSS = 0.13;

    /** Half the stroke across a purlin that butts on its cleat, on paper. */
    private static final double TICK = 0.9;

    private final Shed shed;
    private final SetScope scope;
    private final RoofPlan roof;
    private final PlanAxes axes;
    private final List<MemberAxis> rafters;
    private final List<MemberAxis> purlins;
    private final List<MemberAxis> bridging;
    private final List<MemberAxis> bracing;
    private final List<MemberAxis> flyBraces;
    private final List<MemberAxis> cleats;
    private final List<RowLaps.Lap> laps;

    private RoofFramingPlan(Shed shed, SetScope scope) {
        this.shed = shed;
        this.scope = scope;
        this.roof = new RoofPlan(shed);
        this.axes = roof.axes();
        this.rafters = MemberAxis.of(shed, RAFTERS);
        this.purlins = MemberAxis.of(shed, EnumSet.of(PartKind.PURLIN));
        this.bridging = inRoof(MemberAxis.of(shed, EnumSet.of(PartKind.BRIDGING)));
        this.bracing = inRoof(MemberAxis.of(shed, BRACING));
        this.flyBraces = MemberAxis.of(shed, EnumSet.of(PartKind.FLY_BRACE));
        this.cleats = MemberAxis.of(shed, EnumSet.of(PartKind.PURLIN_CLEAT));
        this.laps = RowLaps.of(purlins, Vec3.ALONG);
    }

    /** The plan for one set: it names the schedule of rows only where that goes out with it. */
    static List<Draft> of(Shed shed, SetScope scope) {
        return new RoofFramingPlan(shed, scope).drafts();
    }

    /** Struts belong to the roof even over a wall; what else stands in a wall is drawn with the wall. */
    private List<MemberAxis> inRoof(List<MemberAxis> members) {
        WallMembers walls = new WallMembers(shed);
        return members.stream()
                .filter(m -> m.part().kind() == PartKind.STRUT || walls.of(m).isEmpty())
                .toList();
    }

    private List<Draft> drafts() {
        RoofPlan.Subject subject = new RoofPlan.Subject("Roof framing plan", notes(), this::content);
        SlopeViews slopes = new SlopeViews(shed);
        if (slopes.areFew() && roof.hasFoot(subject, SlopeViews.HEIGHT)) {
            return roof.drafts(subject, SlopeViews.HEIGHT, slopes::draw);
        }
        List<Draft> drafts = new ArrayList<>(roof.drafts(subject, 0, (sheet, room) -> {}));
        drafts.add(slopes.sheet());
        return drafts;
    }

    private void content(PlacedView view, Strip strip) {
        rafters(view, strip);
        lines(view, strip, cleats, Pen.DIMENSION);
        lines(view, strip, bridging, Pen.DIMENSION);
        lines(view, strip, purlins, Pen.VISIBLE);
        lines(view, strip, flyBraces, Pen.OUTLINE);
        lines(view, strip, bracing, Pen.OUTLINE);
        laps(view, strip);
        butts(view, strip);
        names(view, strip);
        braced(view, strip);
    }

    private void lines(PlacedView view, Strip strip, List<MemberAxis> members, Pen pen) {
        roof.draw(
                view,
                strip,
                members.stream().map(m -> m.line(axes.projection())).toList(),
                pen);
    }

    private void rafters(PlacedView view, Strip strip) {
        for (MemberAxis rafter : rafters) {
            if (strip.has(rafter.place().frame())) {
                List<List<Vec2>> rings = Silhouette.outline(rafter.item(), axes.projection()).stream()
                        .map(ring -> ring.stream().map(view.port()::toPaper).toList())
                        .toList();
                String mark = rafter.part().mark();
                view.draw(List.of(new Fill(rings, RAFTER_GREY, Layer.STEEL, mark)));
                view.draw(rings.stream()
                        .map(r -> new Stroke(r, true, Pen.DIMENSION, Layer.STEEL, mark))
                        .toList());
            }
        }
    }

    private void laps(PlacedView view, Strip strip) {
        List<ViewLine> thick = laps.stream()
                .map(l -> new ViewLine(
                        axes.projection().flat(l.from()), axes.projection().flat(l.to()), ""))
                .toList();
        roof.draw(view, strip, thick, Pen.CUT);
    }

    private void butts(PlacedView view, Strip strip) {
        if (laps.isEmpty()) {
            Vec3 across = Vec3.ACROSS.times(TICK * view.port().scale().n());
            List<ViewLine> ticks = new ArrayList<>();
            for (MemberAxis purlin : purlins) {
                for (Vec3 end : List.of(purlin.from(), purlin.to())) {
                    ticks.add(new ViewLine(
                            axes.projection().flat(end.minus(across)),
                            axes.projection().flat(end.plus(across)),
                            purlin.part().mark()));
                }
            }
            roof.draw(view, strip, ticks, Pen.VISIBLE);
        }
    }

    private void names(PlacedView view, Strip strip) {
        List<MemberAxis> named = new ArrayList<>(purlins);
        named.addAll(bracing);
        MarkNames.place(view, named, axes.projection(), roof.bays(strip));
        List<MemberAxis> small = new ArrayList<>(flyBraces);
        small.addAll(bridging);
        MarkNames.placeShort(view, small, axes.projection(), roof.bays(strip));
    }

    /** Says which bays are braced, once the model has braces there. */
    private void braced(PlacedView view, Strip strip) {
        Envelope bays = roof.bays(strip);
        for (int bay = strip.firstFrame(); bay < strip.lastFrame(); bay++) {
            double from = roof.setOut().frameLine(bay);
            double to = roof.setOut().frameLine(bay + 1);
            boolean braced = bracing.stream()
                    .filter(b -> b.part().kind() == PartKind.BRACE)
                    .anyMatch(b -> b.middle().y() > from && b.middle().y() < to);
            Vec2 middle = axes.at(roof.setOut().span() * BESIDE_CROSS, (from + to) / 2);
            if (braced && bays.contains(middle.x(), middle.y())) {
                view.annotate()
                        .place(Label.of(view.port().toPaper(middle), Label.Pointer.BESIDE, "Braced bay")
                                .preferring(Spot.ABOVE, Spot.BELOW, Spot.RIGHT)
                                .bold());
            }
        }
    }

    private List<Paragraph> notes() {
        Purlins purlin = shed.definition().envelope().purlins();
        List<Paragraph> notes = new ArrayList<>();
        notes.add(Paragraph.heading("Purlins"));
        notes.add(Paragraph.bullet(purlin.member().section().designation() + ", spacing at most "
                + Figure.length(purlin.spacing()) + ", end spaces " + Figure.length(purlin.endSpacing())
                + ". Spacings are measured along the slope, to the face of the web that the cleats bear on; see"
                + " the views along the slope."));
        notes.add(Paragraph.bullet(joints()));
        notes.add(Paragraph.bullet("M12 4.6 bolts, snug, in 18 holes at each cleat"
                + (laps.isEmpty() ? "" : " and at both ends of a lap") + "." + scheduled(" Punching positions are")));
        if (!bridging.isEmpty()) {
            notes.add(Paragraph.bullet("Bridging in thin line between webs, " + section(bridging)
                    + "; fit it before sheets or sheet packs go on the purlins."));
        }
        notes.add(Paragraph.heading("Bracing"));
        notes.add(Paragraph.bullet(
                bracing.isEmpty()
                        ? "No bracing in the plane of the roof: stability is for the engineer."
                        : "Braces in heavy line; they work in tension only and so go in pairs."
                                + scheduled(" Their true lengths, in the plane of the slope, are")));
        sections(bracing).forEach((section, marks) -> notes.add(Paragraph.bullet(marks + ": " + section + ".")));
        if (bracing.stream().anyMatch(b -> b.part().isRod())) {
            notes.add(Paragraph.bullet("Each rod brace is two rods: a turnbuckle past the crossing joins them."));
        }
        if (!flyBraces.isEmpty()) {
            notes.add(Paragraph.bullet("Fly braces in short heavy line, " + section(flyBraces)
                    + ", from the purlin to the rafter's lower face."));
        }
        notes.add(Paragraph.bullet(
                "Sections, spacings, laps, bridging and bracing are to be confirmed by a licensed engineer."));
        return notes;
    }

    /** A sentence on where something is listed; none in a set without that schedule. */
    private String scheduled(String what) {
        return scope == SetScope.ALL
                ? what + " in the " + RowSchedule.title(shed).toLowerCase(Locale.ROOT) + "."
                : "";
    }

    /** The marks of each section, struts and braces apart. */
    private static Map<String, String> sections(List<MemberAxis> members) {
        Map<String, String> sections = new LinkedHashMap<>();
        members.stream()
                .map(MemberAxis::part)
                .sorted(Comparator.comparing((Part p) -> p.kind()))
                .collect(Collectors.groupingBy(
                        p -> p.kind().label() + "s of " + p.material().description(),
                        LinkedHashMap::new,
                        Collectors.mapping(Part::mark, Collectors.toList())))
                .forEach((section, marks) -> sections.put(section, MarkRuns.of(marks)));
        return sections;
    }

    private static String section(List<MemberAxis> members) {
        return members.get(0).part().material().description();
    }

    private String joints() {
        if (laps.isEmpty()) {
            return shed.setOut().frames() > 2
                    ? "Lengths butt on the cleats, a stroke across at each end."
                    : "Each length runs from end to end of the roof.";
        }
        Set<String> lengths = laps.stream()
                .map(l -> Math.round(l.length() * 10) / 10.0)
                .collect(Collectors.toCollection(TreeSet::new))
                .stream()
                .map(Figure::length)
                .collect(Collectors.toCollection(LinkedHashSet::new));
        return "Lengths lap over the frames, drawn thick: " + String.join(", ", lengths)
                + " in all, half to each side.";
    }
}
