package org.baywright.cli;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.baywright.model.cladding.Building;
import org.baywright.model.nesting.ShedCutting;
import org.baywright.model.parts.Shed;
import org.baywright.model.problem.Problem;
import org.baywright.model.takeoff.Costs;
import org.baywright.model.takeoff.PriceList;
import org.baywright.render.output.OutputFolder;
import picocli.CommandLine.Mixin;

/** A command that leaves files, the parts and the summary always among them. */
abstract class WritingCommand extends ShedCommand {
    private static final int UNUSED_TOLD = 3;

    @Mixin
    private Target target;

    @Override
    final void work(Building building) throws IOException {
        Progress progress = new Progress(err());
        progress.say("drawing");
        ShedCutting cutting = cutting(building.shed());
        Outputs outputs = Outputs.of(building, cutting, prices());
        Map<String, OutputFolder.Content> files = new LinkedHashMap<>(files(outputs));
        files.putAll(outputs.data());
        progress.say("writing");
        target.leave(files, out(), err());
        progress.done();
        Report.print(advice(cutting), err());
        outputs.costs().ifPresent(this::told);
    }

    /** What is bought without a price, and what is priced but not bought: a name may be spelt another way. */
    private void told(Costs costs) {
        if (!costs.unpriced().isEmpty()) {
            err().println("advice: lines without a price, and so not in the total: " + costs.unpricedLines()
                    + "; they are " + String.join("; ", costs.unpriced()));
        }
        if (!costs.unused().isEmpty()) {
            err().println("advice: priced but not in this bill: " + some(costs.unused()));
        }
    }

    /** A whole merchant's list is mostly not in one bill: its first lines are enough to see that. */
    private static String some(List<String> articles) {
        String first = articles.stream().limit(UNUSED_TOLD).collect(Collectors.joining("; "));
        return articles.size() <= UNUSED_TOLD ? first : first + " and " + (articles.size() - UNUSED_TOLD) + " more";
    }

    /** The prices to cost the bill with, when there are any. */
    Optional<PriceList> prices() {
        return Optional.empty();
    }

    /** How the members are cut from stock bars. */
    ShedCutting cutting(Shed shed) {
        return ShedCutting.of(shed);
    }

    /** What is worth knowing about the bars, where the command's files order them. */
    List<Problem> advice(ShedCutting cutting) {
        return List.of();
    }

    /** The command's own files. */
    abstract Map<String, OutputFolder.Content> files(Outputs outputs);
}
