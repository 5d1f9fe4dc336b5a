package org.baywright.model.nesting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.baywright.model.catalogue.Catalogue;
import org.baywright.model.catalogue.Family;
import org.baywright.model.catalogue.Section;
import org.baywright.model.cutting.Deadline;
import org.baywright.model.cutting.Saw;
import org.baywright.model.cutting.Stock;
import org.baywright.model.definition.Sawing;
import org.baywright.model.parts.Material;
import org.baywright.model.parts.Part;
import org.baywright.model.parts.Shed;
import org.baywright.model.problem.Problem;
import org.baywright.model.problem.Where;

/**
 * How all members that come as stock bars are cut, section by section. Orders and cutting plans both take their bars
 * from here, so that they never disagree.
 *
 * @param sections in the order of the parts
 * @param saw what cuts and ends take
 */
public record ShedCutting(List<SectionCuts> sections, Saw saw) {
    private static final long USUAL_STEPS = 5_000_000_000L;
    private static final long FEWEST_STEPS = 50_000_000;

    /** Copies the list. */
    public ShedCutting {
        sections = List.copyOf(sections);
    }

    /** From the stock and with the saw of its definition, by the {@link #usual} deadline. */
    public static ShedCutting of(Shed shed) {
        return of(shed, section -> stocks(shed, section), saw(shed), usual());
    }

    /**
     * The deadline of an order, counted in steps: the same shed is ordered alike each time, on a busy machine too. Most
     * sheds are proven best in a tenth of a second; one that is not ends in about five.
     */
    public static Deadline usual() {
        return Deadline.after(USUAL_STEPS);
    }

    /**
     * From given stock, all sections together by a deadline.
     *
     * @param stocks what a section may be cut from, something without limit among it
     */
    public static ShedCutting of(Shed shed, Function<Section, List<Stock>> stocks, Saw saw, Deadline deadline) {
        List<SectionCuts> sections = new ArrayList<>();
        Map<Section, List<Need>> bySection = needs(shed);
        for (Map.Entry<Section, List<Need>> entry : bySection.entrySet()) {
            Deadline share = deadline.share(bySection.size() - sections.size());
            Section section = entry.getKey();
            sections.add(SectionCuts.of(section, entry.getValue(), stocks.apply(section), saw, share));
        }
        planOpenAgain(sections, saw, deadline);
        return new ShedCutting(sections, saw);
    }

    /** Gives what is left to the sections whose share was too small to prove their plan. */
    static void planOpenAgain(List<SectionCuts> sections, Saw saw, Deadline deadline) {
        int open = (int) sections.stream().filter(ShedCutting::isOpen).count();
        for (int k = 0; k < sections.size(); k++) {
            SectionCuts before = sections.get(k);
            if (isOpen(before) && deadline.left() / open > FEWEST_STEPS) {
                Deadline share = deadline.share(open--);
                SectionCuts again = SectionCuts.of(before.section(), before.needs(), before.stocks(), saw, share);
                sections.set(k, again.betterOf(before));
            }
        }
    }

    /** Whether more work could still better or prove a plan. */
    private static boolean isOpen(SectionCuts cuts) {
        return !cuts.proven() && !cuts.searched();
    }

    /** The saw of a shed's definition. */
    public static Saw saw(Shed shed) {
        Sawing sawing = shed.definition().sawing();
        return new Saw(sawing.kerf(), sawing.trim());
    }

    /** What a section may be cut from by the shed's definition: the yard, then what is bought. */
    public static List<Stock> stocks(Shed shed, Section section) {
        List<Stock> stocks = new ArrayList<>(yard(shed, section));
        stocks.addAll(lengths(shed, section));
        return stocks;
    }

    /** What the yard holds of a section. */
    public static List<Stock> yard(Shed shed, Section section) {
        return shed.definition().sawing().yard().stream()
                .filter(bars -> bars.section().equals(section))
                .map(bars -> Stock.offcut(bars.length(), bars.count()))
                .toList();
    }

    /** What can be bought of a section: the lengths of the definition, else the catalogue's. */
    public static List<Stock> lengths(Shed shed, Section section) {
        List<Stock> given = shed.definition().sawing().of(section).stream()
                .flatMap(lengths -> IntStream.range(0, lengths.mm().size())
                        .mapToObj(k -> lengths.prices().isEmpty()
                                ? Stock.length(lengths.mm().get(k))
                                : Stock.priced(
                                        lengths.mm().get(k), lengths.prices().get(k))))
                .toList();
        return given.isEmpty() ? catalogueLengths(section) : given;
    }

    /** The lengths a section is sold in, each as long as it costs. */
    public static List<Stock> catalogueLengths(Section section) {
        return Catalogue.shipped().stockLengths(section).lengthsMm().stream()
                .map(Stock::length)
                .toList();
    }

    /** The sections that a shed's bars are of. */
    public static List<Section> sections(Shed shed) {
        return List.copyOf(needs(shed).keySet());
    }

    private static Map<Section, List<Need>> needs(Shed shed) {
        Map<Section, List<Need>> needs = new LinkedHashMap<>();
        for (Part part : shed.parts()) {
            if (isSawn(part) && part.material() instanceof Material.Bar bar) {
                needs.computeIfAbsent(bar.section(), s -> new ArrayList<>())
                        .add(new Need(Blank.of(part, bar), part.quantity()));
            }
        }
        return needs;
    }

    /** Whether a part is cut from a stock bar: not a plate, and not rolled to its length by the mill. */
    public static boolean isSawn(Part part) {
        return part.kind().isMember()
                && part.material() instanceof Material.Bar bar
                && Family.of(bar.section()) != Family.PURLIN;
    }

    private double total(ToDoubleFunction<SectionCuts> figure) {
        return sections.stream().mapToDouble(figure).sum();
    }

    /** Bars to buy. */
    public int barsToBuy() {
        return sections.stream().mapToInt(SectionCuts::barsToBuy).sum();
    }

    /** Bars cut, those from the yard included. */
    public int barCount() {
        return sections.stream().mapToInt(SectionCuts::barCount).sum();
    }

    /** Length of the bars to buy. */
    public double purchasedMm() {
        return total(SectionCuts::purchasedMm);
    }

    /** No plan buys less. */
    public double boundMm() {
        return total(SectionCuts::boundMm);
    }

    /** The share of all bars that ends in no piece. */
    public double wastePercent() {
        return sections.isEmpty() ? 0 : 100 * (1 - total(SectionCuts::usedMm) / total(SectionCuts::stockMm));
    }

    /** Whether no plan costs less, in any section. */
    public boolean proven() {
        return sections.stream().allMatch(SectionCuts::proven);
    }

    /** Each piece that neither a length to buy nor the yard takes, and so is ordered at its own length. */
    public List<Problem> problems(Function<String, Where> where) {
        return sections.stream().flatMap(s -> s.problems(where).stream()).toList();
    }

    /** The headline figures, as the summary of a shed names them. */
    public Map<String, Object> figures() {
        Map<String, Object> figures = new LinkedHashMap<>();
        figures.put("barsToBuy", barsToBuy());
        figures.put("purchasedSteelM", Math.round(purchasedMm()) / 1000.0);
        figures.put("cuttingWastePercent", Math.round(wastePercent() * 10) / 10.0);
        figures.put("cuttingProven", proven());
        return figures;
    }
}
