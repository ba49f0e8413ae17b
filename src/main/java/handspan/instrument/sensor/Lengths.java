package handspan.instrument.sensor;

/** Length units in millimetres. */
final class Lengths {
    /** One inch: 25.4 mm exactly (international yard and pound agreement of 1959). */
    static final double MM_PER_INCH = 25.4;

    private Lengths() {}

    static double mmPer(Unit unit) {
        return switch (unit) {
            case MM -> 1;
            case CM -> 10;
            case IN -> MM_PER_INCH;
            default -> throw new IllegalArgumentException("unit " + unit.word() + " is no length (mm, cm, in)");
        };
    }
}
