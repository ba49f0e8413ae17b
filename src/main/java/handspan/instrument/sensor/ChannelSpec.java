package handspan.instrument.sensor;

import org.jspecify.annotations.Nullable;

/**
 * Which number of a line is which sensor, as written on the command line: {@code CHANNEL:KIND[:UNIT[:PART]]}.
 *
 * @param channel a label of the line, or a position from 1
 * @param kind what the sensor is
 * @param unit what the board prints
 * @param part which infrared part it is; {@link InfraredPart#TO_80_CM} when an infrared sensor names none, null for all
 *     other kinds
 * @param noReadings numbers that mean no reading, besides those of the kind
 */
public record ChannelSpec(
        String channel,
        SensorKind kind,
        Unit unit,
        @Nullable InfraredPart part,
        NoReadings noReadings) {
    /** Checks that kind, unit and part go together. */
    public ChannelSpec {
        if (channel.isBlank()) {
            throw new IllegalArgumentException("channel '' (a label of the line, or a position from 1)");
        }
        if (!kind.allows(unit)) {
            throw new IllegalArgumentException("unit " + unit.word() + " does not go with " + kind.word() + " (usual: "
                    + kind.usualUnit().word() + ")");
        }
        if (kind != SensorKind.INFRARED && part != null) {
            throw new IllegalArgumentException(
                    "part " + part.word() + " does not go with " + kind.word() + " (infrared only): leave it out");
        }
        if (kind == SensorKind.INFRARED && part == null) {
            part = InfraredPart.TO_80_CM;
        }
    }

    /** A sensor of the usual part. */
    public ChannelSpec(String channel, SensorKind kind, Unit unit) {
        this(channel, kind, unit, null);
    }

    /** A sensor without numbers of its own for no reading. */
    public ChannelSpec(String channel, SensorKind kind, Unit unit, @Nullable InfraredPart part) {
        this(channel, kind, unit, part, NoReadings.NONE);
    }

    /** The same with numbers that mean no reading. */
    public ChannelSpec with(NoReadings listed) {
        return new ChannelSpec(channel, kind, unit, part, listed);
    }

    /**
     * Reads the written form.
     *
     * @throws IllegalArgumentException saying what is wrong
     */
    public static ChannelSpec parse(String text) {
        String[] parts = text.split(":", -1);
        if (parts.length < 2 || parts.length > 4) {
            throw new IllegalArgumentException("channel '" + text
                    + "' (CHANNEL:KIND[:UNIT[:PART]]): write it like 1:distance:mm or light:photoresistor");
        }
        SensorKind kind = SensorKind.parse(parts[1]);
        return new ChannelSpec(
                parts[0].strip(),
                kind,
                parts.length >= 3 ? Unit.parse(parts[2]) : kind.usualUnit(),
                parts.length == 4 ? InfraredPart.parse(parts[3]) : null);
    }

    /** The infrared part; the usual one for other kinds too, so that callers need not ask. */
    public InfraredPart infraredPart() {
        InfraredPart stated = part;
        return stated == null ? InfraredPart.TO_80_CM : stated;
    }

    /** The written form. */
    public String text() {
        String usual = channel + ":" + kind.word() + ":" + unit.word();
        return infraredPart() == InfraredPart.TO_80_CM
                ? usual
                : usual + ":" + infraredPart().word();
    }
}
