package handspan.music.passage;

import handspan.music.tuning.ReferencePitch;
import handspan.number.units.Decibels;
import handspan.number.units.Nanos;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** A stretch of sound under a hand, without a break, sampled every 10 ms. */
final class Sounding {
    /** From sample to sample, s. */
    static final double STEP_S = 0.01;

    /** Frames further apart than this do not belong together. */
    private static final long LONGEST_GAP_NANOS = 150 * Nanos.PER_MS;

    private final double startS;
    private final double[] soundCents;
    private final double[] handCents;
    private final double[] levelDb;

    private Sounding(List<Moment> moments) {
        long from = moments.get(0).timeNanos();
        long to = moments.get(moments.size() - 1).timeNanos();
        int count = 1 + (int) Math.floor(Nanos.toSeconds(to - from) / STEP_S);
        startS = Nanos.toSeconds(from);
        soundCents = sampled(moments, count, moment -> moment.soundKey() * ReferencePitch.CENTS_PER_KEY);
        handCents = sampled(moments, count, moment -> moment.handKey() * ReferencePitch.CENTS_PER_KEY);
        levelDb = sampled(moments, count, moment -> Decibels.of(moment.gain01()));
    }

    /**
     * The stretches of a passage.
     *
     * @param moments in the order of time
     */
    static List<Sounding> in(List<Moment> moments) {
        List<Sounding> soundings = new ArrayList<>();
        int from = 0;
        while (from < moments.size()) {
            int to = from;
            while (to < moments.size() && moments.get(to).sounds() && (to == from || follows(moments, to))) {
                to++;
            }
            if (to - from > 1) {
                soundings.add(new Sounding(moments.subList(from, to)));
            }
            from = Math.max(to, from + 1);
        }
        return soundings;
    }

    private static boolean follows(List<Moment> moments, int i) {
        return moments.get(i).timeNanos() - moments.get(i - 1).timeNanos() <= LONGEST_GAP_NANOS;
    }

    /** In a straight line from moment to moment. */
    private static double[] sampled(List<Moment> moments, int count, ToDoubleFunction<Moment> value) {
        double[] samples = new double[count];
        long from = moments.get(0).timeNanos();
        int at = 0;
        for (int i = 0; i < count; i++) {
            long time = from + Nanos.ofSeconds(i * STEP_S);
            while (at < moments.size() - 2 && moments.get(at + 1).timeNanos() <= time) {
                at++;
            }
            Moment before = moments.get(at);
            Moment after = moments.get(at + 1);
            double span = Math.max(1, after.timeNanos() - before.timeNanos());
            double share = Math.max(0, Math.min(1, (time - before.timeNanos()) / span));
            samples[i] =
                    value.applyAsDouble(before) + share * (value.applyAsDouble(after) - value.applyAsDouble(before));
        }
        return samples;
    }

    /** How many samples. */
    int size() {
        return soundCents.length;
    }

    /** When a sample was, s on the session's clock. */
    double timeS(int sample) {
        return startS + sample * STEP_S;
    }

    /** What sounded at a sample, cents above key 0. */
    double soundCents(int sample) {
        return soundCents[sample];
    }

    /** What the hand alone would have made, likewise. */
    double handCents(int sample) {
        return handCents[sample];
    }

    /** What sounded from a sample up to another. */
    double[] sound(int from, int to) {
        return Arrays.copyOfRange(soundCents, from, to);
    }

    /** What the hand alone would have made. */
    double[] hand(int from, int to) {
        return Arrays.copyOfRange(handCents, from, to);
    }

    /** Level at a sample, dB below full. */
    double levelDb(int sample) {
        return levelDb[sample];
    }
}
