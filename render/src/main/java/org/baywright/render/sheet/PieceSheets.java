package org.baywright.render.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.baywright.model.cladding.Building;
import org.baywright.model.definition.Project;
import org.baywright.model.geometry.Vec2;
import org.baywright.model.parts.Assemblies;
import org.baywright.model.parts.Assembly;
import org.baywright.model.parts.JointHoles;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.Shed;
import org.baywright.render.dimension.Notes;
import org.baywright.render.dimension.Paragraph;
import org.baywright.render.mark.Mark;

/** A drawing for every mark: members as they are cut, then with their plates, then the plates. */
public final class PieceSheets {
    private static final List<String> READING = List.of(
            "Every piece lies with its marked end on the left: paint the mark there. All figures along it run from the tip"
                    + " at that end, in millimetres; hook the tape there and leave it.",
            "Near side, far side, upper and lower edge are as the piece lies on the drawing. The small section is its"
                    + " marked end, near side on the right.",
            "A plate's figure is to its edge nearer the marked end; the table says what it lies on and where its middle"
                    + " is. A plate at an angle is measured to its nearest corner.",
            "A letter after a mark, as C1-A, is the piece with its plates. Pieces of one mark that get other plates have"
                    + " other letters: left and right hand differ. " + GridPlaces.MEANING,
            "Weld legs (z) are starting values or as the engineer shows. A circle: all round; triangles on both sides of"
                    + " the line: both sides of the plate.",
            "Masses are of bare steel. Two people or a machine over 25 kg. Measure the slab and the first frame before"
                    + " cutting the rest.");

    private static final double COLUMN_GAP = 8;

    private final Shed shed;
    private final Assemblies assemblies;
    private final JointHoles holes;

    private PieceSheets(Shed shed) {
        this.shed = shed;
        this.assemblies = Assemblies.of(shed);
        this.holes = JointHoles.of(shed);
    }

    /** The drawings of a building's steel. */
    public static SheetSet of(Building building) {
        PieceSheets pieces = new PieceSheets(building.shed());
        Project project = building.shed().definition().project();
        return new SheetSet(
                project.name() + ": piece drawings",
                project.drawnBy(),
                "Piece drawings; draft, not for construction until certified",
                pieces.sheets(project));
    }

    /** Members and plates as drafts. */
    static List<Draft> drafts(Building building) {
        PieceSheets pieces = new PieceSheets(building.shed());
        List<Draft> drafts = new ArrayList<>(pieces.members().drafts("F2.", "Pieces"));
        drafts.addAll(pieces.plates().drafts("F3.", "Plates"));
        return drafts;
    }

    private List<Sheet> sheets(Project project) {
        BlockFlow members = members();
        BlockFlow plates = plates();
        List<Draft> drafts = new ArrayList<>(members.drafts("F2.", "Pieces"));
        drafts.addAll(plates.drafts("F3.", "Plates"));
        List<List<String>> names = new ArrayList<>(members.names());
        names.addAll(plates.names());
        List<Sheet> framed = Framing.framed(project, drafts);
        return IntStream.range(0, framed.size())
                .mapToObj(i -> framed.get(i).holding(names.get(i)))
                .toList();
    }

    private BlockFlow members() {
        List<Block> blocks = new ArrayList<>(List.of(reading()));
        GridPlaces places = new GridPlaces(shed.setOut());
        for (Part part : shed.parts()) {
            if (part.kind().isMember()) {
                boolean on = part.kind().isWeldedOn();
                List<Assembly> made = on ? assemblies.holding(part) : assemblies.of(part);
                blocks.add(MemberBlock.of(part, made, holes.of(part), holes.unlike(part)));
                assemblies.of(part).stream()
                        .filter(a -> !a.welded().isEmpty())
                        .map(a -> AssemblyBlock.of(a, places))
                        .forEach(blocks::add);
            }
        }
        return new BlockFlow(blocks);
    }

    private BlockFlow plates() {
        return new BlockFlow(shed.parts().stream()
                .filter(p -> !p.kind().isMember())
                .map(p -> PlateBlock.of(p, assemblies.holding(p), assemblies.loose(p)))
                .toList());
    }

    private static Block reading() {
        double width = SheetFrame.room().getWidth();
        double column = (width - COLUMN_GAP) / 2;
        List<Paragraph> all = READING.stream().map(Paragraph::bullet).toList();
        Notes first = Notes.of(all.subList(0, all.size() / 2), column);
        Notes second = Notes.of(all.subList(all.size() / 2, all.size()), column);
        List<Mark> marks = new ArrayList<>(first.draw(new Vec2(0, 0)));
        marks.addAll(second.draw(new Vec2(column + COLUMN_GAP, 0)));
        return new Block("", width, Math.max(first.height(), second.height()), marks);
    }
}
