package org.baywright.model.cutting;

/** Whether a plan is proven best, and if not, why. */
public enum Verdict {
    PROVEN("yes"),
    /** The steps or seconds of the search were used up. */
    CUT_SHORT("no, the best found before the search had to end"),
    /** A list of so many different lengths is planned, but never searched to the end. */
    TOO_MANY_LENGTHS("no, too many different lengths to search them all"),
    /** The search came to its end, and the least that the mitres can lose is less than was found a way for. */
    MITRES("no, whether the mitres could lie closer is open");

    private final String label;

    Verdict(String label) {
        this.label = label;
    }

    /** In words, after "proven best". */
    public String label() {
        return label;
    }
}
