package handspan.music.send;

/**
 * One message that goes out again and again.
 *
 * @param value what it carries
 * @param channel which channel's, by label or position from 1; empty for values of no channel
 * @param address where it goes: starts with {@code /}, ASCII, no blank and none of {@code # * , ? [ ] { }}; one of
 *     {@code {key}}, {@code {degree}}, {@code {octave}} stands for a number
 * @param types a type tag for each number: {@code i f s}, or {@code h d T} that not every receiver knows; {@code T} for
 *     true and false
 * @param scaling from this program's values to those that are sent
 * @param sparing how often
 * @param on whether it is sent at all
 */
public record SendLine(
        SendValue value, String channel, String address, String types, Scaling scaling, Sparing sparing, boolean on) {
    /** Types of Open Sound Control 1.0 that every receiver knows, as far as a number can be sent as one. */
    private static final String CORE = "ifs";

    /** Types that the same specification lists as not required. */
    private static final String OTHER = "hdT";

    /** Checks that all of it goes together. */
    public SendLine {
        NumberedAddress.parse(address);
        if (value.isOfChannel() == channel.isEmpty()) {
            throw new IllegalArgumentException(
                    value.isOfChannel()
                            ? "value '" + value.word() + "' without a channel: write it like " + value.word() + ":1"
                            : "value '" + value.word() + "' of channel '" + channel
                                    + "': only raw and physical are values of a channel");
        }
        if (types.length() != value.types().length()
                || !types.chars().allMatch(type -> (CORE + OTHER).indexOf(type) >= 0)) {
            throw new IllegalArgumentException("types '" + types + "' of '" + value.word() + "' ("
                    + (value.types().length() == 1 ? "one" : "two") + " of i, f, s, h, d, T): write it like "
                    + value.types());
        }
        if (!scaling.equals(Scaling.NONE) && (value == SendValue.NOTE || value == SendValue.DEGREE)) {
            throw new IllegalArgumentException("'" + value.word()
                    + "' carries two numbers that can't be scaled alike: scale one of key, cents, pitch instead");
        }
        if (!scaling.equals(Scaling.NONE) && value == SendValue.STATE && types.equals("s")) {
            throw new IllegalArgumentException("'state' as a word can't be scaled: give it type i");
        }
    }

    /** A line with its value's usual types, as it is, with every frame. */
    public SendLine(SendValue value, String address, boolean on) {
        this(value, "", address, value.types(), Scaling.NONE, Sparing.NONE, on);
    }

    /** The default line for a value of an instrument. */
    public static SendLine byDefault(SendValue value, String instrumentName) {
        return byDefault(value, "", instrumentName);
    }

    /** The default line for a value of an instrument's channel. */
    public static SendLine byDefault(SendValue value, String channel, String instrumentName) {
        String below = channel.isEmpty() ? "" : "/" + OscAddress.part(channel);
        String address = "/" + OscAddress.part(instrumentName) + "/" + value.word() + below;
        return new SendLine(value, channel, address, value.types(), Scaling.NONE, Sparing.NONE, true);
    }

    /** What it is called on the command line: {@code pitch}, {@code raw:2}. */
    public String name() {
        return channel.isEmpty() ? value.word() : value.word() + ":" + channel;
    }

    /** The same elsewhere. */
    public SendLine at(String otherAddress) {
        return new SendLine(value, channel, otherAddress, types, scaling, sparing, on);
    }

    /** The same with other types. */
    public SendLine typed(String otherTypes) {
        return new SendLine(value, channel, address, otherTypes, scaling, sparing, on);
    }

    /** The same scaled otherwise. */
    public SendLine with(Scaling otherScaling) {
        return new SendLine(value, channel, address, types, otherScaling, sparing, on);
    }

    /** The same, as often as said. */
    public SendLine with(Sparing otherSparing) {
        return new SendLine(value, channel, address, types, scaling, otherSparing, on);
    }

    /** The same switched on or off. */
    public SendLine turned(boolean isOn) {
        return new SendLine(value, channel, address, types, scaling, sparing, isOn);
    }

    /** Its types that not every receiver of Open Sound Control 1.0 knows; empty when there are none. */
    public String typesBeyondCore() {
        StringBuilder beyond = new StringBuilder();
        types.chars().filter(type -> OTHER.indexOf(type) >= 0).forEach(type -> beyond.append((char) type));
        return beyond.toString();
    }
}
