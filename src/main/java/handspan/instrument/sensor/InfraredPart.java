package handspan.instrument.sensor;

/**
 * Kinds of infrared triangulation sensor by their range, each with a starting curve from its data sheet (white paper,
 * 25 C, 5 V). Single parts differ: by the data sheets 0.25..0.55 V at the far end, and the difference between the ends
 * 12 % more or less. So a curve from the data sheet gives a shape to begin with; distances come from holds in the room.
 */
public enum InfraredPart {
    /**
     * Data sheet E4-A00201EN (part GP2Y0A21YK0F), Fig. 2, output over distance. Least squares in volts over its 11
     * points from 80 to 800 mm (from 80 to 500 mm for a alone); they lie 0.007 V rms off the law and 0.013 V at most,
     * 2.8 % of the distance at most.
     */
    TO_80_CM("10-80cm", new InfraredLaw(0.0597, 283.04, 25.60), 0.091, 60, 3.13, 80, 100, 800),

    /**
     * Data sheet OP13008EN (part GP2Y0A41SK0F), figure of the output over distance, read by eye. Least squares in volts
     * over its 10 points from 40 to 350 mm (from 70 to 250 mm for a alone); they lie 0.014 V rms off the law and 0.028
     * V at most (at 50 mm), 1.9 % of the distance at most.
     */
    TO_30_CM("4-30cm", new InfraredLaw(-0.0576, 153.83, 14.96), 0.016, 30, 3.04, 40, 40, 300);

    private final String word;

    @SuppressWarnings("ImmutableEnumChecker") // a record of three numbers
    private final InfraredLaw law;

    private final double playedAVolts;
    private final double foldMm;
    private final double foldVolts;
    private final double lawFromMm;
    private final double nearMm;
    private final double farMm;

    InfraredPart(
            String word,
            InfraredLaw law,
            double playedAVolts,
            double foldMm,
            double foldVolts,
            double lawFromMm,
            double nearMm,
            double farMm) {
        this.word = word;
        this.law = law;
        this.playedAVolts = playedAVolts;
        this.foldMm = foldMm;
        this.foldVolts = foldVolts;
        this.lawFromMm = lawFromMm;
        this.nearMm = nearMm;
        this.farMm = farMm;
    }

    /** Its range, as written on the command line and in files. */
    public String word() {
        return word;
    }

    /**
     * The part with a range.
     *
     * @throws IllegalArgumentException naming those there are
     */
    public static InfraredPart parse(String word) {
        for (InfraredPart part : values()) {
            if (part.word.equals(word)) {
                return part;
            }
        }
        throw new IllegalArgumentException("infrared part '" + word + "' (10-80cm, 4-30cm): name the nearest of these");
    }

    /** Starting curve. */
    public InfraredLaw law() {
        return law;
    }

    /**
     * {@code a} of the law fitted to the points within reach of a playing hand alone, V: where two ends are known, it
     * gives the shape between them.
     */
    public double playedAVolts() {
        return playedAVolts;
    }

    /** Where the output is highest, mm: a hand nearer than this reads like one farther away. */
    public double foldMm() {
        return foldMm;
    }

    /** Output at the fold-over, volts. */
    public double foldVolts() {
        return foldVolts;
    }

    /** The distance from which on the law holds, mm: towards the fold-over the output stays under it. */
    public double lawFromMm() {
        return lawFromMm;
    }

    /** Near end of the range that the data sheet states, mm. */
    public double nearMm() {
        return nearMm;
    }

    /** Far end of that range, mm. */
    public double farMm() {
        return farMm;
    }
}
