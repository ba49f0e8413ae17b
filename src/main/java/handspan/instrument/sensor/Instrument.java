package handspan.instrument.sensor;

import handspan.instrument.line.LineShape;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The hardware: how its board talks and which sensor plays what.
 *
 * @param name what the player calls it; also part of every address that is sent
 * @param revision rises each time it is rebuilt, from 1
 * @param baud link speed
 * @param shape how its lines are written; null until learned
 * @param pitch the channel that carries pitch
 * @param level the channel that carries level; null when there is none
 * @param referenceVolts full scale of the converter
 * @param port the board by which it is found again under another name; null where none is known
 */
public record Instrument(
        String name,
        int revision,
        int baud,
        @Nullable LineShape shape,
        ChannelSpec pitch,
        @Nullable ChannelSpec level,
        double referenceVolts,
        @Nullable PortIdentity port) {
    /** Name of an instrument that was given none. */
    public static final String USUAL_NAME = "instrument";

    /** Usual link speed of a board program. */
    public static final int USUAL_BAUD = 115_200;

    /** Usual converter reference in volts. */
    public static final double USUAL_REFERENCE_VOLTS = 5;

    /** Checks name, revision, speed and reference. */
    public Instrument {
        if (name.isBlank()) {
            throw new IllegalArgumentException("instrument name '' (at least one character)");
        }
        if (revision < 1) {
            throw new IllegalArgumentException("instrument revision " + revision + " (1 or more)");
        }
        if (baud < 300 || baud > 4_000_000) {
            throw new IllegalArgumentException("link speed " + baud + " baud (300..4000000)");
        }
        if (!(referenceVolts > 0 && referenceVolts <= 10)) {
            throw new IllegalArgumentException("reference of " + referenceVolts + " V (above 0, at most 10)");
        }
    }

    /** An instrument of which no board is known. */
    public Instrument(
            String name,
            int revision,
            int baud,
            @Nullable LineShape shape,
            ChannelSpec pitch,
            @Nullable ChannelSpec level,
            double referenceVolts) {
        this(name, revision, baud, shape, pitch, level, referenceVolts, null);
    }

    /** Its channels: pitch, then level where there is one. */
    public List<ChannelSpec> channels() {
        return level == null ? List.of(pitch) : List.of(pitch, level);
    }

    /** The sensors of {@link #channels}, in some air. */
    public List<Sensor> sensors(Air air) {
        return channels().stream()
                .map(channel -> Sensor.of(channel, air, referenceVolts))
                .toList();
    }

    /** The same instrument with a learned line shape. */
    public Instrument withShape(LineShape learned) {
        return new Instrument(name, revision, baud, learned, pitch, level, referenceVolts, port);
    }

    /**
     * The same instrument with numbers by which a channel says that it sees nothing.
     *
     * @param channel as pitch or level names it
     */
    public Instrument withNoReadings(String channel, NoReadings numbers) {
        ChannelSpec other = level;
        boolean isPitch = pitch.channel().equals(channel);
        boolean isLevel = other != null && other.channel().equals(channel);
        if (!isPitch && !isLevel) {
            throw new IllegalArgumentException("channel '" + channel + "' is no hand of this instrument (pitch: "
                    + pitch.channel() + (other == null ? "" : ", level: " + other.channel()) + ")");
        }
        return new Instrument(
                name,
                revision,
                baud,
                shape,
                isPitch ? pitch.with(numbers) : pitch,
                other != null && isLevel ? other.with(numbers) : other,
                referenceVolts);
    }

    /** The same instrument at another revision. */
    public Instrument atRevision(int other) {
        return new Instrument(name, other, baud, shape, pitch, level, referenceVolts, port);
    }

    /** The same instrument at another link speed and board. */
    public Instrument at(int otherBaud, @Nullable PortIdentity board) {
        return new Instrument(name, revision, otherBaud, shape, pitch, level, referenceVolts, board);
    }
}
