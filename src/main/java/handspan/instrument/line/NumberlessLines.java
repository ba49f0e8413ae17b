package handspan.instrument.line;

/**
 * Tells lines without a number that stand in the place of a reading ({@code Out of range}) from remarks that come
 * besides ({@code tick...}). Usual words are known; others are learned by their place in time: a line that comes when a
 * reading was due, with the next line as far behind it, stands for one. A line that comes round after equally many
 * readings each time parts them ({@code -----}); no hand is lost so regularly. Allocates nothing after it is made.
 * Owned by one thread.
 */
final class NumberlessLines {
    private static final int KNOWN = 8;
    private static final int SURE = 3;
    /** As many strokes are a line drawn between readings. */
    private static final int RULE = 5;

    private static final double DUE01 = 0.6;
    private static final double AGILITY = 0.1;

    private final long[] likeness = new long[KNOWN];
    private final int[] instead = new int[KNOWN];
    private final int[] besides = new int[KNOWN];
    private final long[] seenAt = new long[KNOWN];
    private final long[] gap = new long[KNOWN];
    private final int[] regular = new int[KNOWN];
    private long readings;
    private boolean parts;
    private int known;
    private int waiting = -1;
    private boolean waitingWasDue;
    private boolean wasReading;
    private boolean any;
    private long lastNanos;
    private double usualNanos;

    /** A line with a number came. */
    void onReading(long timeNanos) {
        readings++;
        double passed = (double) (timeNanos - lastNanos);
        judgeWaiting(passed);
        if (any && wasReading) {
            usualNanos += usualNanos == 0 ? passed : AGILITY * (passed - usualNanos);
        }
        any = true;
        wasReading = true;
        lastNanos = timeNanos;
    }

    /** Whether the latest line without a number only parts readings. */
    boolean parts() {
        return parts;
    }

    /** Whether this line without a number stands for a reading of nothing. */
    boolean standsForReading(byte[] line, int length, long timeNanos) {
        double passed = (double) (timeNanos - lastNanos);
        judgeWaiting(passed);
        boolean strokes = BoardWords.isStrokes(line, length);
        boolean says = !strokes && BoardWords.saysNothing(line, length);
        int text = says ? -1 : indexOf(BoardWords.likeness(line, length));
        boolean round = text >= 0 && comesRound(text);
        parts = strokes || round;
        waiting = text;
        waitingWasDue = isDue(passed);
        any = true;
        wasReading = false;
        lastNanos = timeNanos;
        if (round) {
            return false;
        }
        return says
                || (strokes && length < RULE)
                || (text >= 0 && instead[text] >= SURE && instead[text] > 2 * besides[text]);
    }

    private boolean comesRound(int text) {
        long passed = readings - seenAt[text];
        seenAt[text] = readings;
        regular[text] = passed > 0 && passed == gap[text] ? regular[text] + 1 : 0;
        gap[text] = passed;
        return regular[text] >= SURE;
    }

    private void judgeWaiting(double passed) {
        if (waiting >= 0 && usualNanos > 0) {
            if (waitingWasDue && isDue(passed)) {
                instead[waiting]++;
            } else {
                besides[waiting]++;
            }
        }
        waiting = -1;
    }

    private boolean isDue(double passedNanos) {
        return passedNanos >= DUE01 * usualNanos;
    }

    private int indexOf(long wanted) {
        for (int i = 0; i < known; i++) {
            if (likeness[i] == wanted) {
                return i;
            }
        }
        if (known == KNOWN) {
            return -1;
        }
        likeness[known] = wanted;
        return known++;
    }
}
