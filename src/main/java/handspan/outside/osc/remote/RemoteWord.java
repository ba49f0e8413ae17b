package handspan.outside.osc.remote;

import handspan.music.tuning.Tuning;
import handspan.outside.osc.packet.OscPart;
import handspan.outside.osc.packet.ReceivedMessage;
import org.jspecify.annotations.Nullable;

/**
 * The last parts of the addresses that are obeyed, and what each takes. Whole numbers may come as {@code i}, {@code h},
 * {@code f} or {@code d}, since many a patch sends floats alone; what is no whole number is none.
 */
public enum RemoteWord {
    /** Closes the sound, or opens it. */
    MUTE("mute", "1 or T to close the sound, 0 or F to open it") {
        @Override
        @Nullable
        RemoteOrder of(Object argument) {
            if (argument instanceof Boolean on) {
                return new RemoteOrder.Mute(on);
            }
            Integer number = whole(argument, 0, 1);
            return number == null ? null : new RemoteOrder.Mute(number == 1);
        }
    },
    /** Another tuning. */
    TUNING("tuning", "the name (s) or the number (from 1) of a tuning of the room") {
        @Override
        @Nullable
        RemoteOrder of(Object argument) {
            if (argument instanceof String name) {
                return new RemoteOrder.TuningByName(name);
            }
            Integer number = whole(argument, 1, MOST_TUNINGS);
            return number == null ? null : new RemoteOrder.TuningByNumber(number);
        }
    },
    /** Semitones on top of those of the tuning. */
    TRANSPOSE("transpose", "whole semitones, -96..96, added to those of the tuning") {
        @Override
        @Nullable
        RemoteOrder of(Object argument) {
            Integer semitones = whole(argument, -2 * Tuning.MOST_TRANSPOSE, 2 * Tuning.MOST_TRANSPOSE);
            return semitones == null ? null : new RemoteOrder.Transpose(semitones);
        }
    },
    /** Cents on top of those of the tuning. */
    TRIM("trim", "cents, -200..200, added to those of the tuning") {
        @Override
        @Nullable
        RemoteOrder of(Object argument) {
            boolean within =
                    argument instanceof Number cents && Math.abs(cents.doubleValue()) <= 2 * Tuning.MOST_TRIM_CENTS;
            return within ? new RemoteOrder.Trim(((Number) argument).doubleValue()) : null;
        }
    },
    /** The open level anew. */
    LIGHT("light", "nothing (or I): the present light becomes the open level") {
        @Override
        RemoteOrder bare() {
            return new RemoteOrder.RetakeLight();
        }
    },
    /** An answer. */
    STATE("state", "nothing (or I): the answer goes to the sender") {
        @Override
        RemoteOrder bare() {
            return new RemoteOrder.Tell();
        }
    };

    private static final String TAGS = "ihfdsSTFI";
    private static final int MOST_TUNINGS = 1_000;

    private final String word;
    private final String takes;

    RemoteWord(String word, String takes) {
        this.word = word;
        this.takes = takes;
    }

    /** The last part of its address. */
    public String word() {
        return word;
    }

    /** What it takes, in words. */
    public String takes() {
        return takes;
    }

    /** What a message asks for; null when it has no argument that is taken here, or more than one. */
    @Nullable
    RemoteOrder order(ReceivedMessage message) {
        if (message.arguments().isEmpty()) {
            return bare();
        }
        Object first = message.arguments().get(0);
        boolean taken = message.typeTags().length() == 1 && TAGS.contains(message.typeTags());
        if (!taken || first == null) {
            return null;
        }
        return first == OscPart.Impulse.IMPULSE ? bare() : of(first);
    }

    /** Without an argument. */
    @Nullable
    RemoteOrder bare() {
        return null;
    }

    /** With one argument. */
    @Nullable
    RemoteOrder of(Object argument) {
        return null;
    }

    /** A whole number within its ends; null when it is none. */
    private static @Nullable Integer whole(Object argument, int least, int most) {
        if (!(argument instanceof Number number)) {
            return null;
        }
        double value = number.doubleValue();
        boolean whole = value == Math.rint(value) && value >= least && value <= most;
        return whole ? (Integer) (int) value : null;
    }
}
