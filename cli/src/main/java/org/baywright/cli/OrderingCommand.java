package org.baywright.cli;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.baywright.model.nesting.ShedCutting;
import org.baywright.model.parts.Shed;
import org.baywright.model.problem.Problem;
import org.baywright.model.takeoff.PriceList;
import picocli.CommandLine.Mixin;

/** A command whose files hold the order, with its costs when there are prices. */
abstract class OrderingCommand extends WritingCommand {
    @Mixin
    private PriceFile file;

    @Mixin
    private BarStock bars;

    private Optional<PriceList> prices = Optional.empty();

    @Override
    final List<Problem> others() throws IOException {
        prices = file.read();
        return prices.map(PriceList::problems).orElse(List.of());
    }

    @Override
    final ShedCutting cutting(Shed shed) {
        return bars.cutting(shed);
    }

    @Override
    final List<Problem> advice(ShedCutting cutting) {
        return cutting.problems(bars.places(places()));
    }

    @Override
    final Optional<PriceList> prices() {
        return prices;
    }
}
