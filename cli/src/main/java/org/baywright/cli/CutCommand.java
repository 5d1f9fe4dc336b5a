package org.baywright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.baywright.model.cutting.PieceList;
import org.baywright.model.cutting.SectionPlan;
import org.baywright.model.cutting.Stock;
import org.baywright.model.problem.Problem;
import org.baywright.render.output.OutputFolder;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Plans how bars are cut. */
@Command(
        name = "cut",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = {
            "Plans how bars are cut into the pieces of a list: the least to buy, and how to cut each bar.",
            "The last line it prints sums the plan up."
        })
final class CutCommand implements Callable<Integer> {
    @Option(
            names = "--list",
            required = true,
            paramLabel = "FILE",
            description = "The pieces, CSV: length_mm,quantity and, if wanted, mark,section; - reads standard input.")
    private String list;

    @Mixin
    private BarStock bars;

    @Option(names = "--out", paramLabel = "DIR", description = "The folder to write the cutting plan to.")
    private Path folder;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        if (!bars.hasLengths() && !bars.hasOffcuts()) {
            throw new ParameterException(spec.commandLine(), "give the lengths that bars come in: --stock 8000,12000");
        }
        PieceList pieces = PieceList.read(TextFile.name(list), TextFile.read(list));
        List<Stock> stocks = bars.stocks();
        List<Problem> problems = new ArrayList<>(pieces.problems());
        if (problems.isEmpty()) {
            problems.addAll(SectionPlan.problems(TextFile.name(list), pieces, stocks, bars.saw()));
        }
        if (!problems.isEmpty()) {
            Report.print(problems, spec.commandLine().getErr());
            return Baywright.PROBLEMS;
        }
        if (bars.hasOffcuts() && pieces.bySection().size() > 1) {
            throw new ParameterException(
                    spec.commandLine(), "--offcuts are of one section: plan each section with a list of its own");
        }
        return planned(pieces, stocks);
    }

    private int planned(PieceList pieces, List<Stock> stocks) throws IOException {
        Progress progress = new Progress(spec.commandLine().getErr());
        progress.say("planning");
        List<SectionPlan> plans;
        try {
            plans = SectionPlan.of(pieces, stocks, bars.saw(), bars.seconds());
        } catch (IllegalArgumentException e) {
            spec.commandLine().getErr().println("error: " + TextFile.name(list) + ": " + e.getMessage());
            return Baywright.PROBLEMS;
        }
        progress.done();
        PrintWriter out = spec.commandLine().getOut();
        if (folder != null) {
            Map<String, OutputFolder.Content> files = new LinkedHashMap<>(CutOutputs.plan(plans, TextFile.name(list)));
            OutputFolder.write(folder, files);
            files.keySet().forEach(name -> out.println(folder.resolve(name)));
        }
        plans.forEach(plan -> out.println(PlanLine.of(plan, bars.priced())));
        out.println(PlanLine.sum(plans));
        return Baywright.DONE;
    }
}
