package org.baywright.render.view;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.baywright.model.geometry.Vec2;
import org.baywright.render.mark.Layer;
import org.baywright.render.mark.Mark;
import org.baywright.render.mark.Stroke;
import org.baywright.render.paper.Pen;

/** Strings the lines of each part together, end to end, so that corners are drawn as corners. */
final class Strokes {
    /** An end of lines of one part; ends closer than {@link Edge#FINE} are mostly one. */
    private record Node(String part, long x, long y) {
        static Node of(String part, Vec2 at) {
            return new Node(part, Math.round(at.x() / Edge.FINE), Math.round(at.y() / Edge.FINE));
        }
    }

    private final Map<Node, List<Integer>> linesAt = new HashMap<>();
    private final Set<Integer> used = new HashSet<>();
    private final List<ViewLine> lines;

    private Strokes(List<ViewLine> lines) {
        this.lines = lines;
        for (int i = 0; i < lines.size(); i++) {
            ViewLine line = lines.get(i);
            linesAt.computeIfAbsent(Node.of(line.part(), line.from()), n -> new ArrayList<>())
                    .add(i);
            linesAt.computeIfAbsent(Node.of(line.part(), line.to()), n -> new ArrayList<>())
                    .add(i);
        }
    }

    static List<Mark> of(List<ViewLine> lines, ViewPort port, Pen pen, Layer layer) {
        Strokes strokes = new Strokes(lines);
        List<Mark> marks = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            if (strokes.used.add(i)) {
                marks.add(stroke(strokes.chain(lines.get(i)), lines.get(i).part(), port, pen, layer));
            }
        }
        return marks;
    }

    private static Mark stroke(Deque<Vec2> chain, String part, ViewPort port, Pen pen, Layer layer) {
        List<Vec2> points = new ArrayList<>(chain);
        int last = points.size() - 1;
        boolean closed = last > 2 && Node.of(part, points.get(0)).equals(Node.of(part, points.get(last)));
        if (closed) {
            points.remove(last);
        }
        points.replaceAll(port::toPaper);
        return new Stroke(points, closed, pen, layer, part);
    }

    private Deque<Vec2> chain(ViewLine first) {
        Deque<Vec2> chain = new ArrayDeque<>(List.of(first.from(), first.to()));
        for (var next = step(first.part(), chain.getLast()); next.isPresent(); ) {
            chain.addLast(next.get());
            next = step(first.part(), chain.getLast());
        }
        for (var next = step(first.part(), chain.getFirst()); next.isPresent(); ) {
            chain.addFirst(next.get());
            next = step(first.part(), chain.getFirst());
        }
        return chain;
    }

    /** The far end of an unused line of the part that starts here, which is then used. */
    private Optional<Vec2> step(String part, Vec2 here) {
        Node node = Node.of(part, here);
        return linesAt.get(node).stream().filter(used::add).findFirst().map(i -> {
            ViewLine line = lines.get(i);
            return Node.of(part, line.from()).equals(node) ? line.to() : line.from();
        });
    }
}
