package org.baywright.model.parts;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.baywright.model.definition.Definition;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.setout.SetOut;

/** Builds every frame, then gathers equal pieces under one mark. */
final class ShedBuilder {
    private final Definition definition;
    private final SetOut setOut;

    ShedBuilder(Definition definition) {
        this.definition = definition;
        this.setOut = SetOut.of(definition);
    }

    Shed build() {
        List<Piece> pieces = new ArrayList<>();
        List<Vec3> anchors = new ArrayList<>();
        List<JambHead> jambHeads = new ArrayList<>();
        for (int frame = 1; frame <= setOut.frames(); frame++) {
            FrameMaker maker = new FrameMaker(definition, setOut, frame);
            maker.pieces().stream().map(Piece::settled).forEach(pieces::add);
            anchors.addAll(maker.anchors());
        }
        pieces.addAll(definition.envelope().isFull() ? RoofMaker.pieces(definition, setOut) : List.of());
        if (definition.envelope().isFull()) {
            WallMaker walls = new WallMaker(definition, setOut);
            walls.pieces().stream().map(Piece::settled).forEach(pieces::add);
            anchors.addAll(walls.anchors());
            jambHeads.addAll(walls.jambHeads());
        }
        pieces.addAll(definition.envelope().isFull() ? LiftingMaker.pieces(definition, setOut) : List.of());
        return new Shed(definition, setOut, marked(held(GirtCleatReach.carried(pieces), jambHeads)), anchors);
    }

    private List<Piece> held(List<Piece> pieces, List<JambHead> jambHeads) {
        return jambHeads.isEmpty() ? pieces : new JambHeads(pieces, RoofMaker.rows(definition, setOut)).held(jambHeads);
    }

    /** Marks run by kind, then by first place in the building. */
    private static List<Part> marked(List<Piece> pieces) {
        Map<PartKind, Map<String, List<Piece>>> groups = new EnumMap<>(PartKind.class);
        for (Piece piece : pieces) {
            groups.computeIfAbsent(piece.kind(), k -> new LinkedHashMap<>())
                    .computeIfAbsent(piece.likeness(), k -> new ArrayList<>())
                    .add(piece);
        }
        List<Part> parts = new ArrayList<>();
        groups.forEach((kind, alike) -> {
            int number = 0;
            for (List<Piece> group : alike.values()) {
                parts.add(part(kind.letters() + ++number, group));
            }
        });
        return parts;
    }

    private static Part part(String mark, List<Piece> group) {
        Piece first = group.get(0);
        return new Part(
                mark,
                first.kind(),
                first.material(),
                first.solid(),
                first.holes(),
                first.punched(),
                group.stream().map(Piece::place).toList());
    }
}
