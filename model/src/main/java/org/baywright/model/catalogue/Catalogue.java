package org.baywright.model.catalogue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The sections, anchors and stock lengths to choose from.
 *
 * <p>Sizes made to both standards have different corners, and so different masses: a plain designation is the AS/NZS
 * 1163 section, and every EN 10219 section has {@code EN} after its size, such as {@code SHS 100x100x5 EN}.
 *
 * @param sections every section, in trade order
 * @param anchors every anchor, smallest first
 * @param stockLengths one row for each family
 * @param sheets roofing and walling sheets
 */
public record Catalogue(
        List<Section> sections, List<AnchorType> anchors, List<StockLengths> stockLengths, List<SheetProfile> sheets) {
    /** Names further than this from any section are left unanswered rather than guessed at. */
    private static final int WORDS_APART = 4;

    private static final int NEAREST = 3;

    /** Copies the lists, and checks that every family has its stock lengths. */
    public Catalogue {
        sections = List.copyOf(sections);
        anchors = List.copyOf(anchors);
        stockLengths = List.copyOf(stockLengths);
        sheets = List.copyOf(sheets);
        List<Family> families = stockLengths.stream().map(StockLengths::family).toList();
        if (!families.containsAll(List.of(Family.values()))) {
            throw new IllegalArgumentException("every family needs stock lengths");
        }
    }

    /** What is shipped with Baywright. */
    public static Catalogue shipped() {
        return Shipped.CATALOGUE;
    }

    /** This catalogue with the user's own sections found before the shipped ones. */
    public Catalogue with(List<Section> own) {
        List<Section> all = new ArrayList<>(own);
        all.addAll(sections);
        return new Catalogue(all, anchors, stockLengths, sheets);
    }

    /**
     * The section of that name. Spaces, case, {@code ×} for {@code x}, zeros after the point and a missing SHS or RHS
     * are forgiven; the order of the dimensions is not, since the first lies in the plane of the frame.
     */
    public Optional<Section> section(String name) {
        Designation wanted = Designation.of(name);
        return sections.stream()
                .filter(s -> Designation.of(s.designation()).equals(wanted))
                .findFirst();
    }

    /** Up to three designations nearest to a name: first the same kind of section, then the nearest size. */
    public List<String> near(String name) {
        Designation wanted = Designation.of(name);
        return sections.stream()
                .map(s -> Candidate.of(s.designation(), wanted))
                .filter(c -> c.wordsApart <= WORDS_APART)
                .sorted(Candidate.NEAREST_FIRST)
                .map(Candidate::designation)
                .distinct()
                .limit(NEAREST)
                .toList();
    }

    /** The anchor of that size; spaces and case are forgiven. */
    public Optional<AnchorType> anchor(String size) {
        Designation wanted = Designation.of(size);
        return anchors.stream()
                .filter(a -> Designation.of(a.size()).equals(wanted))
                .findFirst();
    }

    /** The sheet of that name; spaces and case are forgiven. */
    public Optional<SheetProfile> sheet(String name) {
        Designation wanted = Designation.of(name);
        return sheets.stream()
                .filter(s -> Designation.of(s.name()).equals(wanted))
                .findFirst();
    }

    /** The lengths of bar that a section is sold in. */
    public StockLengths stockLengths(Section section) {
        return stockLengths.stream()
                .filter(row -> row.family() == Family.of(section))
                .findFirst()
                .orElseThrow();
    }

    /** A designation and how far it is from the wanted one. */
    private record Candidate(String designation, int wordsApart, double sizesApart) {
        static final Comparator<Candidate> NEAREST_FIRST =
                Comparator.comparingInt(Candidate::wordsApart).thenComparingDouble(Candidate::sizesApart);

        static Candidate of(String designation, Designation wanted) {
            Designation own = Designation.of(designation);
            return new Candidate(designation, wanted.wordsApart(own), wanted.sizesApart(own));
        }
    }
}
