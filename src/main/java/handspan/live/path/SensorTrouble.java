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

    /** A hand that was taken out of the beam for longer, while the other one plays, would be put back. */
    private static final long NOTHING_NANOS = 3 * Nanos.PER_SECOND;

    private final String channel;
    private final int slot;
    private final Sensor sensor;
    private final boolean alwaysReads;
    private final FreezeWatch freeze;
    private long toldNanos;
    private long readNanos;
    private long nothingNanos;
    private double nothing = Double.NaN;
    private boolean any;
    private String words = "";

    /**
     * Nothing wrong yet.
     *
     * @param alwaysReads whether the sensor gives a number without a hand, too, as light cells do
     */
    SensorTrouble(HandRole hand, int slot, Sensor sensor, boolean alwaysReads, FreezeWatch freeze) {
        this.channel = hand.word() + " channel";
        this.slot = slot;
        this.sensor = sensor;
        this.alwaysReads = alwaysReads;
        this.freeze = freeze;
    }

    /**
     * A line came.
     *
     * @param otherPlays whether the other hand is certainly there, so that this one should be
     */
    void onReading(Reading reading, boolean otherPlays) {
        long now = reading.timeNanos();
        if (!any) {
            any = true;
            toldNanos = now;
            readNanos = now;
            nothingNanos = now;
        }
        boolean reads = reading.has(slot) && sensor.hasReading(reading.value(slot));
        if (reading.tells(slot)) {
            toldNanos = now;
            freeze.onReading(reads ? reading.value(slot) : Double.NaN, now);
        }
        readNanos = reads ? now : readNanos;
        double given = reading.has(slot) ? reading.value(slot) : Double.NaN;
        if (reads || !otherPlays || Double.compare(given, nothing) != 0) {
            nothingNanos = now;
        }
        nothing = given;
        words = words(now);
    }

    private String words(long now) {
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
        if (now - nothingNanos >= NOTHING_NANOS) {
            String number = Double.isNaN(nothing) ? "no number" : Figures.text(nothing, decimals(nothing)) + " only";
            return "the " + channel + " gives " + number + ", which is no reading, while the other hand plays: is the"
                    + " hand over its sensor? If it is, take the sensor's power away for a moment";
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
