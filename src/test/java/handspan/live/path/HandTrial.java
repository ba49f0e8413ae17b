package handspan.live.path;

import handspan.FrameList;
import handspan.TestRooms;
import handspan.instrument.line.Reading;
import handspan.music.send.SoundFrame;
import handspan.music.tuning.Tuning;
import handspan.number.units.Nanos;
import handspan.profile.RoomProfile;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * A hand, a sensor and the whole path: what a listener hears of a hand that comes or goes. The sensor is a model of
 * this test's own: the mean of the truth over its measuring time, normal noise, whole millimetres, a number for
 * "nothing", and lost readings in runs of one or two.
 */
final class HandTrial {
    /** A still hand before it leaves, and after it has come, s. */
    static final double STILL_S = 1.5;

    /** What a sensor prints when nothing is in its beam. */
    static final double NOTHING = 8190;

    /** Sound this far under the level it had is not heard beside it, dB. */
    private static final double AUDIBLE_DB = -40;

    private static final double BACKGROUND_MM = 620;

    /** Half-way readings come while the hand's edge crosses so much of the beam, mm (assumed). */
    private static final double BEAM_MM = 60;

    /** How quickly a hand gets up speed and loses it, mm/s^2: a fast reach of 400 mm at 2 m/s peaks at 16 m/s^2. */
    private static final double GATHER_MM_PER_S2 = 15_000;

    /** Where a hand is at a time in s; not finite: nowhere. */
    interface Truth {
        double mm(double seconds);
    }

    /** A sensor. */
    enum Kind {
        FLIGHT(50, 1, 0.02, 1200, 0),
        ECHO(18, 1, 0, 600, 0.045),
        /** As ECHO, over a hand that reflects badly: field measurements found up to 12.5 %. */
        POOR_ECHO(18, 1, 0, 600, 0.125),
        POOR_FLIGHT(50, 1, 0.02, 1200, 0.05),
        /** A board that prints each value of a slow sensor five times. */
        REPEATED_ECHO(90, 5, 0, 600, 0.045);

        final double ratePerS;
        final int repeats;
        final double measuringS;
        final double rangeMm;
        final double lost01;

        Kind(double ratePerS, int repeats, double measuringS, double rangeMm, double lost01) {
            this.ratePerS = ratePerS;
            this.repeats = repeats;
            this.measuringS = measuringS;
            this.rangeMm = rangeMm;
            this.lost01 = lost01;
        }
    }

    /** A way to go or come. */
    enum Way {
        OUTWARD,
        INWARD,
        SIDEWAYS;

        /** The hand rests, leaves from {@link #STILL_S} on. */
        Truth leaving(double mm, double mmPerS) {
            return seconds -> {
                double since = seconds - STILL_S;
                return since <= 0 ? mm : gone(mm, mmPerS, since);
            };
        }

        /** The same backwards: the hand rests from {@link #STILL_S} on. */
        Truth coming(double mm, double mmPerS) {
            return seconds -> {
                double until = STILL_S - seconds;
                return until <= 0 ? mm : gone(mm, mmPerS, until);
            };
        }

        private double gone(double mm, double mmPerS, double seconds) {
            double gatherS = mmPerS / GATHER_MM_PER_S2;
            double wayMm =
                    seconds < gatherS ? GATHER_MM_PER_S2 * seconds * seconds / 2 : mmPerS * (seconds - gatherS / 2);
            return switch (this) {
                case OUTWARD -> mm + wayMm;
                case INWARD -> mm - wayMm < 10 ? Double.NaN : mm - wayMm;
                case SIDEWAYS -> {
                    double share = wayMm / BEAM_MM;
                    yield share > 1 ? Double.NaN : mm + (BACKGROUND_MM - mm) * share * share * (3 - 2 * share);
                }
            };
        }
    }

    final Kind kind;
    final Tuning tuning = Tuning.usual();
    final FrameList frames = new FrameList();
    final List<Double> goodS = new ArrayList<>();
    private final PlayPath path;
    private final Random random;
    private long reachedNanos;
    private int lostLeft;
    private boolean justLost;

    HandTrial(Kind kind, long seed) {
        this.kind = kind;
        RoomProfile profile = TestRooms.twoDistances(kind.ratePerS, tuning, 2);
        path = new PlayPath(profile, tuning, TestRooms.SHAPE, PathSettings.USUAL.muted(false), List.of(frames), 0);
        random = new Random(seed);
    }

    /** Plays a hand from 0 s on. */
    HandTrial play(Truth truth, double seconds) {
        double phase = random.nextDouble();
        double mm = NOTHING;
        for (int i = 0; (i + phase) / kind.ratePerS < seconds; i++) {
            double at = (i + phase) / kind.ratePerS;
            mm = i % kind.repeats == 0 ? read(truth, at) : mm;
            reading(mm, at);
        }
        return this;
    }

    /** One line of the board. */
    void reading(double mm, double seconds) {
        long now = Nanos.ofSeconds(seconds);
        tickTo(now);
        if (mm >= 60 && mm <= 540) {
            goodS.add(seconds);
        }
        path.onReading(new Reading(now, new double[] {mm, 300}, 0b11));
    }

    void tickTo(long now) {
        while (path.nextDeadlineNanos() <= now) {
            reachedNanos = Math.max(reachedNanos, path.nextDeadlineNanos());
            path.onTick(reachedNanos);
        }
        reachedNanos = Math.max(reachedNanos, now);
    }

    private double read(Truth truth, double at) {
        double sum = 0;
        int seen = 0;
        int samples = kind.measuringS > 0 ? 8 : 1;
        for (int i = 0; i < samples; i++) {
            double mm = truth.mm(at - kind.measuringS * (i + 0.5) / samples);
            if (mm <= kind.rangeMm) {
                sum += mm;
                seen++;
            }
        }
        double noise = 2 * random.nextGaussian();
        boolean lost = lost();
        return 2 * seen < samples + 1 || lost ? NOTHING : Math.rint(sum / seen + noise);
    }

    private boolean lost() {
        if (lostLeft == 0 && !justLost && random.nextDouble() < kind.lost01 / (1.5 * (1 - kind.lost01))) {
            lostLeft = 1 + random.nextInt(2);
        }
        justLost = lostLeft > 0;
        lostLeft -= justLost ? 1 : 0;
        return justLost;
    }

    double cents(SoundFrame frame) {
        return 1200 * Math.log(frame.pitchHz() / 440) / Math.log(2);
    }

    /** Frames in a stretch of time, s. */
    List<SoundFrame> between(double fromS, double toS) {
        return frames.frames().stream()
                .filter(frame -> seconds(frame) >= fromS && seconds(frame) < toS)
                .toList();
    }

    static double seconds(SoundFrame frame) {
        return Nanos.toSeconds(frame.timeNanos());
    }

    /** Whether a frame is heard beside the ceiling's level. */
    static boolean isHeard(SoundFrame frame) {
        return frame.gain01() > 0.501187233627 * Math.pow(10, AUDIBLE_DB / 20);
    }

    /**
     * What is heard of a hand that leaves at {@link #STILL_S}.
     *
     * @param sweepCents furthest heard pitch from where the hand was
     * @param afterCents furthest heard pitch from what sounded at the last good reading
     * @param silentMs from the last good reading to silence
     * @param centSeconds pitch off the one before, weighted by gain over the gain before, times time
     */
    record Left(double sweepCents, double afterCents, double silentMs, double centSeconds) {}

    Left left() {
        double before = between(STILL_S - 0.3, STILL_S).stream()
                .mapToDouble(this::cents)
                .average()
                .orElseThrow();
        double lastGoodS = goodS.get(goodS.size() - 1);
        double atLast = cents(between(STILL_S - 0.3, lastGoodS + 1e-9).stream()
                .reduce((a, b) -> b)
                .orElseThrow());
        double sweep = 0;
        double after = 0;
        double silentS = lastGoodS;
        double integral = 0;
        List<SoundFrame> all = between(STILL_S, 1e9);
        for (int i = 0; i < all.size(); i++) {
            SoundFrame frame = all.get(i);
            if (!isHeard(frame)) {
                continue;
            }
            double off = Math.abs(cents(frame) - before);
            sweep = Math.max(sweep, off);
            silentS = Math.max(silentS, seconds(frame));
            if (seconds(frame) > lastGoodS) {
                after = Math.max(after, Math.abs(cents(frame) - atLast));
            }
            double stepS = i + 1 < all.size() ? Math.min(0.02, seconds(all.get(i + 1)) - seconds(frame)) : 0;
            integral += off * frame.gain01() / 0.501187233627 * stepS;
        }
        return new Left(sweep, after, 1000 * (silentS - lastGoodS), integral);
    }

    /**
     * What is heard of a hand that comes and rests from {@link #STILL_S} on.
     *
     * @param slideCents furthest heard pitch, in the first 200 ms of sound, from where the hand settles
     * @param heardMs from when the hand rests to the first sound; below 0 it sounds before
     * @param centSeconds pitch off the settled one, weighted by gain, times time
     */
    record Came(double slideCents, double heardMs, double centSeconds) {}

    Came came() {
        double settled = between(STILL_S + 0.5, STILL_S + 1).stream()
                .mapToDouble(this::cents)
                .average()
                .orElseThrow();
        double firstS = Double.NaN;
        double slide = 0;
        double integral = 0;
        List<SoundFrame> all = between(0, STILL_S + 0.5);
        for (int i = 0; i < all.size(); i++) {
            SoundFrame frame = all.get(i);
            if (!isHeard(frame)) {
                continue;
            }
            firstS = Double.isNaN(firstS) ? seconds(frame) : firstS;
            double off = Math.abs(cents(frame) - settled);
            if (seconds(frame) < firstS + 0.2) {
                slide = Math.max(slide, off);
            }
            double stepS = i + 1 < all.size() ? Math.min(0.02, seconds(all.get(i + 1)) - seconds(frame)) : 0;
            integral += off * frame.gain01() / 0.501187233627 * stepS;
        }
        return new Came(slide, 1000 * (firstS - STILL_S), integral);
    }
}
