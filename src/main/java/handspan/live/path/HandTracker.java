package handspan.live.path;

import handspan.hand.smooth.HandSmoother;
import handspan.hand.smooth.SmoothSettings;
import handspan.hand.smooth.SpikeGate;
import handspan.instrument.line.Reading;
import handspan.instrument.sensor.Sensor;
import handspan.number.units.Nanos;
import handspan.room.HandSetup;
import org.jspecify.annotations.Nullable;

/** One hand's half of the path, once per reading: sensor, spike gate, smoother, presence. Owned by the path thread. */
public final class HandTracker {
    private final int slot;
    private final Sensor sensor;
    private final HandSetup setup;
    private final SpikeGate gate;
    private final HandSmoother smoother;
    private final Presence presence;
    private final double usualIntervalS;
    private long lastNanos;
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
        this.gate = new SpikeGate(setup.noiseMm());
        this.smoother = new HandSmoother(settings, setup.noiseMm(), ratePerS);
        this.presence = new Presence(ratePerS, fadeNanos);
        this.usualIntervalS = 1 / ratePerS;
    }

    /**
     * Takes a reading.
     *
     * @return where the hand is now; null when this reading says nothing new about it
     */
    public @Nullable Hand onReading(Reading reading) {
        if (!reading.has(slot) || !sensor.hasReading(reading.value(slot))) {
            return null;
        }
        double mm = setup.response().mm(sensor.physical(reading.value(slot)) - shift);
        if (!Double.isFinite(mm) || !(setup.scaledTravel() || setup.zone().holds(mm))) {
            return null;
        }
        return onPosition(mm, reading.timeNanos());
    }

    private @Nullable Hand onPosition(double mm, long timeNanos) {
        if (presence.onTick(timeNanos) == Presence.State.AWAY) {
            gate.reset();
        }
        if (!gate.passes(mm, timeNanos)) {
            return null;
        }
        Presence.State state = presence.onHand(mm, timeNanos);
        if (state != Presence.State.PLAYING) {
            smoother.reset();
            smoothing = false;
            return null;
        }
        double intervalS = smoothing ? Math.max(1e-4, Nanos.toSeconds(timeNanos - lastNanos)) : usualIntervalS;
        smoothing = true;
        lastNanos = timeNanos;
        return new Hand(timeNanos, smoother.next(mm, intervalS), smoother.speedMmPerS());
    }

    /** Smooths otherwise from now on, without a step. */
    public void smoothBy(SmoothSettings settings) {
        smoother.use(settings);
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

    /** Readings held back as spikes. */
    public long spikes() {
        return gate.heldBack();
    }

    /** The zone. */
    public HandSetup setup() {
        return setup;
    }
}
