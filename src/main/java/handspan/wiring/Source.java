package handspan.wiring;

/**
 * Where readings come from, as written on the command line.
 *
 * @param kind what it is
 * @param name port, file or simulation
 */
public record Source(Kind kind, String name) {
    /** Kinds of sources. */
    public enum Kind {
        /** A serial port. */
        PORT,
        /** A recording. */
        TAKE,
        /** A simulated instrument. */
        SIMULATION
    }

    private static final String TAKE = "take:";
    private static final String SIMULATION = "sim:";

    /** Reads the written form: {@code take:FILE}, {@code sim:NAME}, anything else is a port. */
    public static Source parse(String text) {
        if (text.startsWith(TAKE)) {
            return new Source(Kind.TAKE, text.substring(TAKE.length()));
        }
        if (text.startsWith(SIMULATION)) {
            return new Source(Kind.SIMULATION, text.substring(SIMULATION.length()));
        }
        return new Source(Kind.PORT, text);
    }

    /** The written form with a recording's bare name, for where there is little room. */
    public String shortText() {
        return kind == Kind.TAKE
                ? TAKE + name.substring(1 + Math.max(name.lastIndexOf('/'), name.lastIndexOf('\\')))
                : text();
    }

    /** The written form. */
    public String text() {
        return switch (kind) {
            case PORT -> name;
            case TAKE -> TAKE + name;
            case SIMULATION -> SIMULATION + name;
        };
    }
}
