package org.baywright.model.rules;

/** One check over the whole of what was asked for. */
interface Rule {
    /** Reports what it finds. */
    void check(Asked asked);
}
