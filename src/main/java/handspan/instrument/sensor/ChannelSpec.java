package handspan.instrument.sensor;

/**
 * Which number of a line is which sensor, as written on the command line: {@code CHANNEL:KIND[:UNIT]}.
 *
 * @param channel a label of the line, or a position from 1
 * @param kind what the sensor is
 * @param unit what the board prints
 */
public record ChannelSpec(String channel, SensorKind kind, Unit unit) {
    /** Checks that kind and unit go together. */
    public ChannelSpec {
        if (channel.isBlank()) {
            throw new IllegalArgumentException("channel '' (a label of the line, or a position from 1)");
        }
        if (!kind.allows(unit)) {
            throw new IllegalArgumentException("unit " + unit.word() + " does not go with " + kind.word() + " (usual: "
                    + kind.usualUnit().word() + ")");
        }
    }

    /**
     * Reads the written form.
     *
     * @throws IllegalArgumentException saying what is wrong
     */
    public static ChannelSpec parse(String text) {
        String[] parts = text.split(":", -1);
        if (parts.length < 2 || parts.length > 3) {
            throw new IllegalArgumentException(
                    "channel '" + text + "' (CHANNEL:KIND[:UNIT]): write it like 1:distance:mm or light:photoresistor");
        }
        SensorKind kind = SensorKind.parse(parts[1]);
        return new ChannelSpec(parts[0].strip(), kind, parts.length == 3 ? Unit.parse(parts[2]) : kind.usualUnit());
    }

    /** The written form. */
    public String text() {
        return channel + ":" + kind.word() + ":" + unit.word();
    }
}
