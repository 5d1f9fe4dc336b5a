package org.baywright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.baywright.model.cladding.Building;
import org.baywright.model.cutting.Deadline;
import org.baywright.model.cutting.ListPlan;
import org.baywright.model.cutting.Piece;
import org.baywright.model.cutting.PieceList;
import org.baywright.model.cutting.SectionPlan;
import org.baywright.model.cutting.Stock;
import org.baywright.model.definition.Reading;
import org.baywright.model.nesting.ShedCutting;
import org.baywright.model.problem.Problem;
import org.baywright.render.output.OutputFolder;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Plans how bars are cut, for a shed or for any list of pieces. */
@Command(
        name = "cut",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = {
            "Plans how bars are cut into the members of a shed, or into the pieces of a list: the least to buy, and how"
                    + " to cut each bar.",
            "For a shed, writes cut-list.pdf, cut-list.csv, cutting-plan.pdf and cutting-plan.csv; for a list, the plan"
                    + " alone. The last line it prints sums the plan up."
        })
final class CutCommand implements Callable<Integer> {
    private static final double USUAL_SECONDS = 10;
    /** Measured for 100,000 pieces. */
    private static final double SECONDS_TO_WRITE_ONE = 3e-5;

    @Parameters(
            arity = "0..1",
            paramLabel = "FILE",
            description = "The definition of a shed, YAML or JSON; - reads standard input. Or give --list.")
    private String file;

    @Option(
            names = "--set",
            paramLabel = "KEY=VALUE",
            description = "Sets a key of the definition, dotted: --set roofPitch=12.")
    private List<String> settings = new ArrayList<>();

    @Option(
            names = "--list",
            paramLabel = "FILE",
            description = "The pieces, CSV: length_mm,quantity and, if wanted, mark,section; - reads standard input.")
    private String list;

    @Mixin
    private BarStock bars;

    @Option(names = "--out", paramLabel = "DIR", description = "The folder to write to.")
    private Path folder;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        if ((file == null) == (list == null)) {
            throw wrong(
                    "give the definition of a shed, or the pieces with --list" + (file == null ? "" : ", not both"));
        }
        if (list != null && !settings.isEmpty()) {
            throw wrong("--set changes the definition of a shed; there is none with --list");
        }
        return list == null ? shed() : list();
    }

    private int shed() throws IOException {
        PrintWriter err = spec.commandLine().getErr();
        PrintWriter out = spec.commandLine().getOut();
        Reading reading = Source.read(file, settings);
        Optional<Building> building = ShedCommand.built(reading, List.of(), err);
        if (building.isEmpty()) {
            return Baywright.PROBLEMS;
        }
        Progress progress = new Progress(err);
        progress.say("planning");
        ShedCutting cutting = bars.cutting(building.get().shed());
        if (folder != null) {
            Outputs outputs = Outputs.of(building.get(), cutting, Optional.empty());
            Map<String, OutputFolder.Content> files = new LinkedHashMap<>(CutOutputs.of(outputs));
            files.putAll(outputs.data());
            new Target(folder).leave(files, out, err);
        }
        progress.done();
        Report.print(cutting.problems(bars.places(reading.places())), err);
        cutting.sections()
                .forEach(cuts -> PlanLine.unused(cuts.section().designation(), cuts.unusedYard())
                        .ifPresent(err::println));
        cutting.sections().forEach(cuts -> out.println(PlanLine.of(cuts)));
        out.println(PlanLine.sum(cutting));
        return Baywright.DONE;
    }

    private int list() throws IOException {
        if (!bars.hasLengths() && !bars.hasOffcuts()) {
            throw wrong("give the lengths that bars come in: --stock 8000,12000");
        }
        PieceList pieces = PieceList.read(TextFile.name(list), TextFile.read(list));
        List<Stock> stocks = bars.stocks();
        List<Problem> problems = new ArrayList<>(pieces.problems());
        if (problems.isEmpty()) {
            problems.addAll(ListPlan.problems(TextFile.name(list), pieces, stocks, bars.saw()));
        }
        if (!problems.isEmpty()) {
            return told(problems);
        }
        if (bars.hasOffcuts() && pieces.bySection().size() > 1) {
            throw wrong("--offcuts are of one section: plan each section with a list of its own");
        }
        return planned(pieces, stocks);
    }

    private int told(List<Problem> problems) {
        Report.print(problems, spec.commandLine().getErr());
        return Baywright.PROBLEMS;
    }

    /** Seconds for the search: what was asked for, less what starting took and writing that many pieces will. */
    private double toPlan(PieceList pieces) {
        double asked = bars.seconds(USUAL_SECONDS);
        long count = pieces.bySection().values().stream()
                .flatMap(List::stream)
                .mapToLong(Piece::quantity)
                .sum();
        double gone = ProcessHandle.current()
                .info()
                .startInstant()
                .map(start -> Duration.between(start, Instant.now()).toMillis() / 1000.0)
                .orElse(0.0);
        return Math.max(asked / 2, asked - gone - (folder == null ? 0 : count * SECONDS_TO_WRITE_ONE));
    }

    private int planned(PieceList pieces, List<Stock> stocks) throws IOException {
        Progress progress = new Progress(spec.commandLine().getErr());
        progress.say("planning");
        ListPlan planned = ListPlan.of(TextFile.name(list), pieces, stocks, bars.saw(), Deadline.in(toPlan(pieces)));
        progress.done();
        if (!planned.problems().isEmpty()) {
            return told(planned.problems());
        }
        List<SectionPlan> plans = planned.sections();
        PrintWriter out = spec.commandLine().getOut();
        if (folder != null) {
            Map<String, OutputFolder.Content> files = new LinkedHashMap<>(CutOutputs.plan(plans, TextFile.name(list)));
            OutputFolder.write(folder, files);
            files.keySet().forEach(name -> out.println(folder.resolve(name)));
        }
        PrintWriter err = spec.commandLine().getErr();
        plans.forEach(plan ->
                PlanLine.unused(plan.section(), plan.plan().unusedYard()).ifPresent(err::println));
        plans.forEach(plan -> out.println(PlanLine.of(plan, bars.priced())));
        out.println(PlanLine.sum(plans));
        return Baywright.DONE;
    }

    private ParameterException wrong(String message) {
        return new ParameterException(spec.commandLine(), message);
    }
}
