package org.baywright.model.parts;

import java.util.ArrayList;
import java.util.List;
import org.baywright.model.definition.Definition;
import org.baywright.model.geometry.Vec3;
import org.baywright.model.setout.GirtRows;
import org.baywright.model.setout.OpeningPlace;
import org.baywright.model.setout.SetOut;
import org.baywright.model.setout.TrackGirt;
import org.baywright.model.setout.WallCover;
import org.baywright.model.setout.WallFace;
import org.baywright.model.setout.WallPosts;

/** Makes what the walls are hung on: uprights, girts, trimmers of openings, and the braces of the side walls. */
final class WallMaker {
    private final List<Piece> pieces = new ArrayList<>();
    private final List<Vec3> anchors = new ArrayList<>();
    private final List<JambHead> jambHeads = new ArrayList<>();

    WallMaker(Definition definition, SetOut setOut) {
        List<WallFace> faces = WallFace.of(definition, setOut);
        List<OpeningPlace> openings = OpeningPlace.of(definition, faces);
        List<WallCover> covers = WallCover.of(definition, setOut, faces);
        List<TrackGirt> tracks = TrackGirt.of(definition, openings);
        List<GirtMaker> girts = new ArrayList<>();
        for (WallCover cover : covers) {
            WallPosts posts = WallPosts.of(definition, cover, openings);
            List<OpeningPlace> here = WallPosts.in(cover, openings);
            WallBay bay = new WallBay(definition, setOut, cover, posts, here, covers);
            PostMaker uprights = new PostMaker(bay);
            pieces.addAll(uprights.pieces());
            anchors.addAll(uprights.anchors());
            jambHeads.addAll(JambHead.of(bay));
            pieces.addAll(new TrimMaker(bay).pieces());
            List<TrackGirt> ofWall = tracks.stream()
                    .filter(t -> t.door().face().equals(cover.face()))
                    .toList();
            girts.add(new GirtMaker(bay, GirtRows.of(definition, setOut, cover), ofWall));
        }
        girts.forEach(g -> pieces.addAll(g.pieces(neighbours(g, girts))));
        faces.stream()
                .filter(face -> !face.wall().isEnd())
                .forEach(face -> pieces.addAll(new WallBraceMaker(definition, setOut, face, openings).pieces()));
    }

    private static List<GirtMaker> neighbours(GirtMaker girts, List<GirtMaker> all) {
        return all.stream()
                .filter(o -> o != girts && o.bay().face().equals(girts.bay().face()))
                .toList();
    }

    List<Piece> pieces() {
        return pieces;
    }

    List<Vec3> anchors() {
        return anchors;
    }

    /** The heads of side walls' jambs, which no rafter holds. */
    List<JambHead> jambHeads() {
        return jambHeads;
    }
}
