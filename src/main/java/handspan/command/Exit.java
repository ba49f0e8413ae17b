package handspan.command;

/** Exit codes, the same for all verbs. */
final class Exit {
    /** Done. */
    static final int DONE = 0;

    /** The verdict is "no", or time ran out, or it was cancelled. */
    static final int NO = 1;

    /** The command line is wrong: usage, unknown simulation, scale or channel. */
    static final int USAGE = 2;

    /** Instrument or network. */
    static final int INSTRUMENT = 3;

    /** File, or unknown room. */
    static final int FILE = 4;

    /** A mistake in this program. */
    static final int INTERNAL = 5;

    private Exit() {}
}
