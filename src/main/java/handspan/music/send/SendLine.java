package handspan.music.send;

/**
 * One message of a bundle.
 *
 * @param value what it carries
 * @param address where it goes: starts with {@code /}, ASCII, no blank and none of {@code # * , ? [ ] { }}
 * @param on whether it is sent at all
 */
public record SendLine(SendValue value, String address, boolean on) {
    /** Checks the address. */
    public SendLine {
        OscAddress.check(address);
    }

    /** The default line for a value of an instrument. */
    public static SendLine byDefault(SendValue value, String instrumentName) {
        return new SendLine(value, "/" + OscAddress.part(instrumentName) + "/" + value.word(), true);
    }
}
