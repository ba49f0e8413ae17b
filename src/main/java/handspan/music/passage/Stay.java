package handspan.music.passage;

import handspan.music.tuning.ReferencePitch;
import handspan.music.tuning.ScaleLadder;
import java.util.ArrayList;
import java.util.List;

/**
 * Where within a sounding one note was stayed on.
 *
 * @param note of the ladder
 * @param from first sample
 * @param to sample after the last
 */
record Stay(int note, int from, int to) {
    /** A stay that is shorter belongs to the glide, or to the note before it. */
    private static final int SHORTEST = (int) Math.round(0.1 / Sounding.STEP_S);

    /** Half the stretch over which pitch is averaged before its note is looked up, so that vibrato changes no note. */
    private static final int HALF_MEAN = (int) Math.round(0.1 / Sounding.STEP_S);

    /** How many samples. */
    int size() {
        return to - from;
    }

    /**
     * All stays of a sounding, in their order.
     *
     * @param shiftKeys what transposition and trim add to the ladder
     */
    static List<Stay> in(Sounding sounding, ScaleLadder ladder, double shiftKeys) {
        boolean[] gliding = GlideRule.gliding(sounding.hand(0, sounding.size()));
        List<Stay> stays = new ArrayList<>();
        int from = 0;
        while (from < gliding.length) {
            int to = from;
            while (to < gliding.length && !gliding[to]) {
                to++;
            }
            if (to > from) {
                stays.addAll(merged(byNote(sounding, from, to, key -> ladder.nearest(key - shiftKeys))));
            }
            from = to + 1;
        }
        return stays;
    }

    private static List<Stay> byNote(
            Sounding sounding, int from, int to, java.util.function.DoubleToIntFunction nearest) {
        double[] sums = new double[to - from + 1];
        for (int i = 0; i < to - from; i++) {
            sums[i + 1] = sums[i] + sounding.soundCents(from + i);
        }
        List<Stay> runs = new ArrayList<>();
        int begun = from;
        int note = -1;
        for (int i = from; i < to; i++) {
            int low = Math.max(0, i - from - HALF_MEAN);
            int high = Math.min(to - from, i - from + HALF_MEAN + 1);
            int here = nearest.applyAsInt((sums[high] - sums[low]) / (high - low) / ReferencePitch.CENTS_PER_KEY);
            if (here != note && i > from) {
                runs.add(new Stay(note, begun, i));
                begun = i;
            }
            note = here;
        }
        runs.add(new Stay(note, begun, to));
        return runs;
    }

    /** Short runs join the one before; what is still short is none. */
    private static List<Stay> merged(List<Stay> runs) {
        List<Stay> merged = new ArrayList<>();
        for (Stay run : runs) {
            Stay last = merged.isEmpty() ? null : merged.get(merged.size() - 1);
            if (last != null && (run.note == last.note || run.size() < SHORTEST)) {
                merged.set(merged.size() - 1, new Stay(last.note, last.from, run.to));
            } else if (last != null && last.size() < SHORTEST) {
                merged.set(merged.size() - 1, new Stay(run.note, last.from, run.to));
            } else {
                merged.add(run);
            }
        }
        merged.removeIf(stay -> stay.size() < SHORTEST);
        return merged;
    }
}
