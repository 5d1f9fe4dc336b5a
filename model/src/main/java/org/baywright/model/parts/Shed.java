package org.baywright.model.parts;

import java.util.List;
import java.util.Optional;
import org.baywright.model.definition.Definition;
import org.baywright.model.definition.LiftingBeam;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.setout.OpeningPlace;
import org.baywright.model.setout.RoofSlope;
import org.baywright.model.setout.SetOut;
import org.baywright.model.setout.WallCover;
import org.baywright.model.setout.WallFace;

/** The whole building in steel: the one model that every drawing, list and order is read off. */
public final class Shed {
    private final Definition definition;
    private final SetOut setOut;
    private final List<Part> parts;
    private final List<Vec3> anchorHoles;
    private Optional<Assemblies> assemblies = Optional.empty();

    /**
     * A shed of given parts.
     *
     * @param definition what was asked for
     * @param setOut its lines and levels
     * @param parts every part, members first
     * @param anchorHoles every anchor, at the finished floor
     */
    public Shed(Definition definition, SetOut setOut, List<Part> parts, List<Vec3> anchorHoles) {
        this.definition = definition;
        this.setOut = setOut;
        this.parts = List.copyOf(parts);
        this.anchorHoles = List.copyOf(anchorHoles);
    }

    /** What was asked for. */
    public Definition definition() {
        return definition;
    }

    /** Its lines and levels. */
    public SetOut setOut() {
        return setOut;
    }

    /** Every part, members first. */
    public List<Part> parts() {
        return parts;
    }

    /** Every anchor, at the finished floor. */
    public List<Vec3> anchorHoles() {
        return anchorHoles;
    }

    /** What is welded to what: worked out once, for many sheets and lists ask. */
    synchronized Assemblies assemblies() {
        if (assemblies.isEmpty()) {
            assemblies = Optional.of(new Assemblies(this));
        }
        return assemblies.get();
    }

    /** The model of a definition that the rules have passed. */
    public static Shed of(Definition definition) {
        return new ShedBuilder(definition).build();
    }

    /** The parts of one kind. */
    public List<Part> parts(PartKind kind) {
        return parts.stream().filter(p -> p.kind() == kind).toList();
    }

    /** How many parts of one kind, all marks together. */
    public int count(PartKind kind) {
        return parts(kind).stream().mapToInt(Part::quantity).sum();
    }

    /** The lifting beam over a frame; a bare frame has none, whatever was asked for. */
    public Optional<LiftingBeam> liftingBeam(int frame) {
        return definition
                .envelope()
                .liftingBeam()
                .filter(b -> count(PartKind.LIFTING_BEAM) > 0)
                .filter(b -> frame >= b.fromFrame() && frame <= b.toFrame());
    }

    /** The planes of its roof. */
    public List<RoofSlope> slopes() {
        return RoofSlope.of(definition, setOut);
    }

    /** Its walls on their string lines. */
    public List<WallFace> walls() {
        return WallFace.of(definition, setOut);
    }

    /** What is sheeted of its walls. */
    public List<WallCover> wallCovers() {
        return WallCover.of(definition, setOut, walls());
    }

    /** Its openings, each in its wall. */
    public List<OpeningPlace> openings() {
        return OpeningPlace.of(definition, walls());
    }
}
