package handspan.live.path;

import handspan.hand.smooth.HandSmoother;
import handspan.hand.smooth.SmoothSettings;
import handspan.hand.smooth.SpikeGate;
import handspan.instrument.line.Reading;
import handspan.instrument.sensor.Sensor;
import handspan.number.units.Nanos;
import handspan.room.HandSetup;
import org.jspecify.annotations.Nullable;

/** One hand's half of the path, once per reading: sensor, gate, smoother, presence. Owned by the path thread. */
public final class HandTracker {
    private final int slot;
    private final Sensor sensor;
    private final HandSetup setup;
    private final SpikeGate gate;
    private final HandSmoother smoother;
    private final Beat beat;
    private final Presence presence;
    private final double usualIntervalS;
    private long lastNanos;
    private boolean heldBack;
    private boolean smoothing;
    private double shift;

    /**
     * A tracker.
     *
     * @param slot of its channel in the line shape
     * @param sensor of that channel
     * @param setup captured in the room
     * @param settings of the smoother
     * @param ratePerS readings a second
     * @param fadeNanos how long a fade takes
     */
    public HandTracker(
            int slot, Sensor sensor, HandSetup setup, SmoothSettings settings, double ratePerS, long fadeNanos) {
        this.slot = slot;
        this.sensor = sensor;
        this.setup = setup;
        this.gate = new SpikeGate();
        this.smoother = new HandSmoother(settings);
        this.beat = new Beat(ratePerS);
        this.presence = new Presence(ratePerS, fadeNanos, PlayBounds.of(setup));
        this.usualIntervalS = 1 / ratePerS;
    }

    /**
     * Takes a reading.
     *
     * @return where the hand is now; null when this reading says nothing new about it
     */
    public @Nullable Hand onReading(Reading reading) {
        if (!reading.tells(slot)) {
            return null;
        }
        long timeNanos = reading.timeNanos();
        boolean sees = reading.has(slot) && sensor.hasReading(reading.value(slot));
        double mm = sees ? setup.response().mm(sensor.physical(reading.value(slot)) - shift) : Double.NaN;
        boolean measured = beat.isNew(sees ? reading.value(slot) : Double.NaN, reading.printedNanos());
        if (Double.isFinite(mm) && (setup.scaledTravel() || setup.zone().holds(mm))) {
            return onPosition(mm, measured, reading.printedNanos(), timeNanos);
        }
        if (!measured) {
            presence.onTick(timeNanos);
        } else if (Double.isFinite(mm)) {
            presence.onOutside(mm, timeNanos);
        } else {
            presence.onNothing(timeNanos);
        }
        return null;
    }

    private @Nullable Hand onPosition(double mm, boolean measured, long printedNanos, long timeNanos) {
        if (presence.onTick(timeNanos) == Presence.State.AWAY) {
            gate.reset();
        }
        if (measured) {
            heldBack = !passes(mm, printedNanos);
        }
        if (heldBack) {
            presence.onLeap(mm, timeNanos);
            return null;
        }
        if (!measured) {
            presence.onRepeat(timeNanos);
            return null;
        }
        if (gate.hasJumped()) {
            smoother.reset();
        }
        Presence.State state = presence.onHand(mm, printedNanos, timeNanos);
        if (state != Presence.State.PLAYING) {
            smoother.reset();
            smoothing = false;
            return null;
        }
        double intervalS = smoothing ? Math.max(1e-4, Nanos.toSeconds(printedNanos - lastNanos)) : usualIntervalS;
        smoothing = true;
        lastNanos = printedNanos;
        return new Hand(timeNanos, smoother.next(mm, intervalS), smoother.speedMmPerS());
    }

    private boolean passes(double mm, long timeNanos) {
        double expectedMm = smoothing ? smoother.expectedMm(Nanos.toSeconds(timeNanos - lastNanos)) : Double.NaN;
        return gate.passes(mm, timeNanos, expectedMm, setup.noise().at(mm));
    }

    /** Smooths otherwise from now on, without a step. */
    public void smoothBy(SmoothSettings settings) {
        smoother.use(settings);
    }

    /** When the hand leaves, it fades for so long from now on. */
    void fadingFor(long nanos) {
        presence.fadingFor(nanos);
    }

    /** All physical values read so much too high from now on, in the sensor's unit. */
    public void shift(double physical) {
        shift = physical;
    }

    /** Time passes. */
    public void onTick(long timeNanos) {
        presence.onTick(timeNanos);
    }

    /** The link is gone. */
    public void onLost() {
        presence.onLost();
        gate.reset();
    }

    /** Whether the hand plays. */
    public boolean isPlaying() {
        return presence.state() == Presence.State.PLAYING;
    }

    /** When presence can change without a reading. */
    public long nextDeadlineNanos() {
        return presence.nextDeadlineNanos();
    }

    /** From one measurement of its sensor to the next. */
    public long intervalNanos() {
        return beat.intervalNanos();
    }

    /** Readings held back as spikes. */
    public long spikes() {
        return gate.heldBack();
    }

    /** The zone. */
    public HandSetup setup() {
        return setup;
    }
}
