package org.baywright.render.sheet;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.baywright.model.definition.LiftingBeam;
import org.baywright.model.geometry.Tolerance;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.PartKind;
import org.baywright.render.dimension.Figure;
import org.baywright.render.mark.Layer;
import org.baywright.render.paper.Pen;
import org.baywright.render.view.Item;
import org.baywright.render.view.Silhouette;
import org.locationtech.jts.geom.Envelope;

/**
 * Heights and hook of a lifting beam.
 *
 * @param scene what the detail shows
 * @param figures its sizes
 */
record LiftingDetail(DetailScene scene, DetailFigures figures) {
    private static final Set<PartKind> LIFTING =
            EnumSet.of(PartKind.LIFTING_BEAM, PartKind.LIFTING_BRACKET, PartKind.LIFTING_PLATE);

    /**
     * Heights from the hook to the top of the bracket, and where the hook is at its highest; seen along the frame of a
     * beam across the building the hook hangs further in, where the section shows it.
     */
    void draw() {
        PlacedView view = figures.view();
        Detail detail = scene.detail();
        LiftingBeam beam = scene.shed().definition().envelope().liftingBeam().orElseThrow();
        double hook = beam.underside() - beam.hookDrop();
        boolean fromFront = Math.abs(detail.view().towards().y()) > 0.99;
        boolean hangsHere = beam.along() || !fromFront;
        TreeSet<Double> heights = new TreeSet<>(hangsHere ? List.of(hook, beam.underside()) : List.of());
        Envelope plate = new Envelope();
        List<String> plates = scene.shed().parts(PartKind.LIFTING_PLATE).stream()
                .map(Part::mark)
                .toList();
        for (Item item : scene.items(LIFTING)) {
            Envelope seen = Silhouette.bounds(List.of(item), detail.view());
            heights.add(Tolerance.fabricated(seen.getMinY()));
            heights.add(Tolerance.fabricated(seen.getMaxY()));
            if (plates.contains(item.part())) {
                plate.expandToInclude(seen);
            }
        }
        figures.chain(heights.stream().map(z -> new Vec2(plate.getMaxX(), z)).toList(), new Vec2(1, 0));
        if (!hangsHere) {
            return;
        }
        Vec2 middle = detail.view().flat(detail.at());
        double x = fromFront
                ? detail.view()
                        .flat(new Vec3(beam.offset(), detail.at().y(), 0))
                        .x()
                : middle.x();
        Vec2 low = new Vec2(x, hook);
        view.line(new Vec2(x, beam.underside()), low, Pen.DIMENSION, Layer.STEEL);
        view.annotate().note(low, "Hook at its highest +" + Figure.length(hook));
    }
}
