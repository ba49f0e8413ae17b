package handspan.live.path;

import handspan.instrument.line.Reading;
import handspan.instrument.sensor.Sensor;
import handspan.number.units.Figures;
import handspan.number.units.Nanos;
import handspan.room.HandRole;

/**
 * What is wrong with one hand's sensor while lines still come, in words: frozen, or without a number. Pure: time comes
 * with the calls. Owned by one thread.
 */
final class SensorTrouble {
    /** Shorter gaps are dropouts. */
    private static final long MISSING_NANOS = 2 * Nanos.PER_SECOND;

    private final HandRole hand;
    private final int slot;
    private final Sensor sensor;
    private final boolean alwaysReads;
    private final FreezeWatch freeze;
    private long toldNanos;
    private long readNanos;
    private boolean any;
    private String words = "";

    /**
     * Nothing wrong yet.
     *
     * @param alwaysReads whether the sensor gives a number without a hand, too, as light cells do
     */
    SensorTrouble(HandRole hand, int slot, Sensor sensor, boolean alwaysReads, FreezeWatch freeze) {
        this.hand = hand;
        this.slot = slot;
        this.sensor = sensor;
        this.alwaysReads = alwaysReads;
        this.freeze = freeze;
    }

    void onReading(Reading reading) {
        long now = reading.timeNanos();
        if (!any) {
            any = true;
            toldNanos = now;
            readNanos = now;
        }
        boolean reads = reading.has(slot) && sensor.hasReading(reading.value(slot));
        if (reading.tells(slot)) {
            toldNanos = now;
            freeze.onReading(reads ? reading.value(slot) : Double.NaN, now);
        }
        readNanos = reads ? now : readNanos;
        words = words(now);
    }

    private String words(long now) {
        String channel = hand.word() + " channel";
        if (freeze.isFrozen()) {
            return "the " + channel + " has given " + Figures.text(freeze.value(), decimals(freeze.value())) + " for "
                    + Figures.text(freeze.seconds(), 0)
                    + " s: its sensor has stopped measuring; take its power away for a moment";
        }
        if (now - toldNanos >= MISSING_NANOS) {
            return "the " + channel + " is not in the lines any more, while others still come: look at the board's"
                    + " program and at that sensor's wires";
        }
        if (alwaysReads && now - readNanos >= MISSING_NANOS) {
            return "the " + channel + " gives no number that can be a reading, while lines still come: look at that"
                    + " sensor's wires";
        }
        return "";
    }

    private static int decimals(double value) {
        return value == Math.rint(value) ? 0 : 2;
    }

    void onLost() {
        freeze.restart();
        any = false;
        words = "";
    }

    /** Whether the sensor gives the same number again and again without measuring. */
    boolean isFrozen() {
        return freeze.isFrozen();
    }

    /** What is wrong; empty when nothing is. Changes with time, for what lasts. */
    String words() {
        return words;
    }
}
