package handspan.room.calibrate;

import handspan.instrument.line.LineShape;
import handspan.instrument.line.Reading;
import handspan.instrument.sensor.Sensor;
import handspan.number.fit.Robust;
import handspan.number.fit.SteadyValue;
import handspan.number.units.Figures;
import handspan.number.units.Nanos;
import handspan.room.HandSetup;
import handspan.room.Room;
import java.util.Optional;

/**
 * Sees where the pitch hand of a known room comes to rest after it was asked for a place: by the stillness that ends a
 * reach in a calibration, after a move. Pure: time comes with the readings. Owned by one thread.
 *
 * <p>A hand has moved when it was seen further from its last rest than a still hand may be, but no more than a third of
 * the way from the last place asked for to this one is needed, and further than three times a reading's noise; or when
 * it was gone for a third of a second. (Medians of five readings scatter by 0.56 of a reading's noise, so that three
 * times it is five standard deviations.) Before the first rest there is none to move from.
 */
public final class ReachWatch {
    /**
     * Where a hand came to rest.
     *
     * @param mm its distance
     * @param standardUncertaintyMm of that
     * @param sinceNanos since when it rests
     */
    public record Rest(double mm, double standardUncertaintyMm, long sinceNanos) {}

    private static final double WAY_SHARE = 1.0 / 3;
    private static final double NOISE_TIMES = 3;
    private static final long GONE_NANOS = Nanos.PER_SECOND / 3;
    private static final int MEDIAN_OF = 5;

    /** Slow boards need longer for as many readings as a rest is judged by; two are spared. */
    private static final double READINGS = HoldJudge.LEAST_READINGS + 2;

    private final int slot;
    private final HandSetup setup;
    private final Sensor sensor;
    private final HoldRules rules;
    private final HandWatch hand;
    private final Reminders reminders = new Reminders();
    private final double[] latestMm = new double[MEDIAN_OF];
    private int latest;
    private long seenNanos;
    private double restMm = Double.NaN;
    private double wantedMm = Double.NaN;
    private double neededMm;
    private boolean moved;
    private long judgedNanos;
    private String news = "";

    /**
     * A watch that nothing was asked of yet.
     *
     * @param shape of the board's lines; holds the room's pitch channel
     */
    public ReachWatch(LineShape shape, Room room) {
        this.setup = room.pitch();
        this.sensor = room.sensor(setup);
        this.slot = shape.indexOf(setup.channel().channel());
        HoldRules usual = HoldRules.USUAL.forReach();
        this.rules = usual.lasting(Math.min(10, Math.max(usual.holdSeconds(), READINGS / room.ratePerS())));
        this.hand = new HandWatch(slot, sensor, rules);
    }

    /** A place is asked for; what the hand did before counts no more. */
    public void ask(double placeMm, long timeNanos) {
        double wayMm = Double.isNaN(wantedMm) ? Double.POSITIVE_INFINITY : Math.abs(placeMm - wantedMm);
        double noiseMm = setup.noise().at(Double.isNaN(restMm) ? placeMm : restMm);
        neededMm = Math.max(Math.min(rules.stillMm(), WAY_SHARE * wayMm), NOISE_TIMES * noiseMm);
        wantedMm = placeMm;
        moved = Double.isNaN(restMm);
        forget(timeNanos);
    }

    /** Readings stopped for a while: what was half seen is forgotten. */
    public void forget(long timeNanos) {
        hand.window().clear();
        reminders.clear();
        news = "";
        latest = 0;
        seenNanos = timeNanos;
    }

    /**
     * Takes a reading.
     *
     * @return where the hand has come to rest, once for each asking
     */
    public Optional<Rest> onReading(Reading reading) {
        if (!reading.tells(slot) || Double.isNaN(wantedMm)) {
            return Optional.empty();
        }
        long timeNanos = reading.timeNanos();
        hand.onReading(reading, true, Optional.empty());
        watchMove(reading);
        if (!hand.window().isFull(timeNanos) || timeNanos - judgedNanos < Calibration.LOOK_NANOS) {
            return Optional.empty();
        }
        judgedNanos = timeNanos;
        HoldJudge.Verdict verdict = hand.judge(Optional.empty(), timeNanos);
        if (verdict.held().isPresent() && moved) {
            return Optional.of(rest(verdict.held().get().value()));
        }
        HoldJudge.Verdict refused = verdict.held().isPresent() ? notMoved() : verdict;
        if (reminders.isDue(refused, true, timeNanos)) {
            news = refused.reason();
        }
        return Optional.empty();
    }

    private void watchMove(Reading reading) {
        if (moved) {
            return;
        }
        boolean valid = reading.has(slot) && sensor.hasReading(reading.value(slot));
        if (valid) {
            seenNanos = reading.timeNanos();
            latestMm[latest % MEDIAN_OF] = setup.response().mm(sensor.physical(reading.value(slot)));
            latest++;
            moved = latest >= MEDIAN_OF && Math.abs(Robust.median(latestMm) - restMm) > neededMm;
        } else {
            moved = reading.timeNanos() - seenNanos >= GONE_NANOS;
        }
        if (moved) {
            // the last rest must not count for this one
            hand.window().clear();
        }
    }

    private Rest rest(SteadyValue value) {
        double slope = HandFit.slope(setup.response(), value.value());
        restMm = setup.response().mm(value.value());
        moved = false;
        return new Rest(
                restMm, value.standardUncertainty() * slope, hand.window().firstNanos());
    }

    private HoldJudge.Verdict notMoved() {
        return HoldJudge.notYet(
                HoldJudge.Why.NO_MOVE,
                "no move seen since the last rest (more than " + Figures.text(neededMm, 0) + " mm)");
    }

    /** Why the hand does not count as resting yet, when that is news; empty else. Told once. */
    public String takeNews() {
        String taken = news;
        news = "";
        return taken;
    }
}
