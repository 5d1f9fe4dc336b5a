package org.baywright.model.parts;

import java.util.List;
import java.util.stream.Stream;
import org.baywright.model.definition.Definition;
import org.baywright.model.setout.RoofRows;
import org.baywright.model.setout.SetOut;

/** Makes what lies on the rafters under the roof sheets, slope by slope. */
final class RoofMaker {
    private RoofMaker() {}

    static List<Piece> pieces(Definition definition, SetOut setOut) {
        return rows(definition, setOut).stream().flatMap(RoofMaker::slope).toList();
    }

    /** The rows of every slope, bay by bay. */
    static List<RowBays> rows(Definition definition, SetOut setOut) {
        return RoofRows.of(definition, setOut).stream()
                .map(rows -> new RowBays(definition, setOut, rows))
                .toList();
    }

    private static Stream<Piece> slope(RowBays bays) {
        return Stream.of(
                        new PurlinMaker(bays).pieces(),
                        new PurlinCleatMaker(bays).pieces(),
                        new BridgingMaker(bays).pieces(),
                        new RoofBraceMaker(bays).pieces(),
                        new FlyBraceMaker(bays).pieces())
                .flatMap(pieces -> pieces);
    }
}
