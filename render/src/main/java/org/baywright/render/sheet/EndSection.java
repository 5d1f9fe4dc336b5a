package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.geometry.Profile;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.parts.Material;
import org.baywright.model.parts.Part;
import org.baywright.render.mark.Arc;
import org.baywright.render.mark.Fill;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Stroke;
import org.baywright.render.mark.Text;
import org.baywright.render.paper.Pen;
import org.baywright.render.paper.Scale;

/** The section of a member, seen on its marked end: its depth up, its near side on the right. */
final class EndSection {
    private static final double TEXT = 2.5;
    private static final double CAPTION = 6;

    private EndSection() {}

    /** Draws in the middle of a strip under a height of the paper, no larger than the room, with its scale below. */
    static List<Mark> draw(Part member, double left, double width, double top, double height) {
        Profile profile = member.solid().profile();
        Scale scale = Scale.fitting(profile.width(), profile.depth(), width, height - CAPTION);
        List<List<Vec2>> rings = rings(member, profile);
        double high = rings.get(0).stream().mapToDouble(Vec2::x).max().orElseThrow();
        double centre = left + width / 2;
        List<List<Vec2>> onPaper = rings.stream()
                .map(ring -> ring.stream()
                        .map(p -> new Vec2(centre + scale.toPaper(p.y()), top - scale.toPaper(high - p.x())))
                        .toList())
                .toList();
        List<Mark> marks = new ArrayList<>();
        if (member.isRod()) {
            Vec2 middle = new Vec2(centre, top - scale.toPaper(profile.depth()) / 2);
            marks.add(Arc.circle(middle, scale.toPaper(profile.depth()) / 2, Pen.VISIBLE, Layer.STEEL, member.mark()));
        } else {
            marks.add(new Fill(onPaper, 0.85, Layer.STEEL, member.mark()));
            onPaper.forEach(ring -> marks.add(new Stroke(ring, true, Pen.VISIBLE, Layer.STEEL, member.mark())));
        }
        double foot = top - scale.toPaper(profile.depth()) - CAPTION + 1;
        marks.add(Text.level("end " + scale, new Vec2(centre, foot), TEXT, Text.Align.CENTRE, Layer.LABEL));
        return marks;
    }

    private static List<List<Vec2>> rings(Part member, Profile profile) {
        return member.material() instanceof Material.Bar bar
                ? SectionShape.rings(bar.section(), profile)
                : List.of(profile.outline());
    }
}
