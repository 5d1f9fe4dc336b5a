package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.baywright.render.dimension.Dimension;
import org.baywright.render.dimension.LabelField;
import org.baywright.render.mark.Mark;
import org.baywright.render.paper.Scale;
import org.locationtech.jts.geom.Envelope;

/** Gathers views, tables and notes into the draft of one sheet; all share one account of the paper taken. */
final class SheetBuilder {
    private final String number;
    private final String title;
    private final LabelField field = new LabelField(SheetFrame.aboveBand());
    private final List<PlacedView> views = new ArrayList<>();
    private final List<Mark> marks = new ArrayList<>();

    SheetBuilder(String number, String title) {
        this.number = number;
        this.title = title;
    }

    /** A view at the largest preferred scale that fits its cell. */
    PlacedView view(String name, Envelope cell, Envelope bounds, Margins margins) {
        return keep(new PlacedView(field, name, cell, bounds, margins));
    }

    /** A view at a given scale. */
    PlacedView view(String name, Envelope cell, Envelope bounds, Margins margins, Scale scale) {
        return keep(new PlacedView(field, name, cell, bounds, margins, scale));
    }

    private PlacedView keep(PlacedView view) {
        views.add(view);
        return view;
    }

    /** Marks that belong to no view, such as tables and notes. */
    void draw(Collection<? extends Mark> more) {
        marks.addAll(more);
        field.drawn(more);
    }

    /** Paper that no label may take. */
    void keepClear(Envelope paper) {
        field.obstacle(paper);
    }

    Draft build() {
        List<Mark> all = new ArrayList<>(marks);
        List<Dimension> dimensions = new ArrayList<>();
        Set<Scale> scales = new LinkedHashSet<>();
        for (PlacedView view : views) {
            all.addAll(view.marks());
            dimensions.addAll(view.annotate().dimensions());
            scales.add(view.port().scale());
        }
        return new Draft(number, title, scale(scales), all, dimensions);
    }

    private static String scale(Set<Scale> scales) {
        if (scales.isEmpty()) {
            return "none";
        }
        return scales.size() == 1 ? scales.iterator().next() + " @ A3" : "as shown @ A3";
    }
}
