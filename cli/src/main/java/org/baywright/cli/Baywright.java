package org.baywright.cli;

/** The command line. */
public final class Baywright {
    private Baywright() {}

    /** Runs one command. */
    public static void main(String[] args) {}
}
