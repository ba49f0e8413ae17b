package handspan.show.chart;

import java.awt.Color;

/** How often a note is missed, in a few classes that are told apart by colour and by pattern. */
enum MissClass {
    /** Under a twentieth: no pattern. */
    SELDOM("missed by under 5 %", 0.05, 0, false),
    /** Up to a fifth: the most that counts as playable with an assumed aim. */
    SOMETIMES("5 to 20 %", 0.2, 11, false),
    /** Up to a half. */
    OFTEN("20 to 50 %", 0.5, 6, false),
    /** More than that. */
    MOSTLY("over 50 %", Double.POSITIVE_INFINITY, 6, true);

    private final String words;
    private final double below01;
    private final int stripePx;
    private final boolean crossed;

    MissClass(String words, double below01, int stripePx, boolean crossed) {
        this.words = words;
        this.below01 = below01;
        this.stripePx = stripePx;
        this.crossed = crossed;
    }

    /** The class of a chance. */
    static MissClass of(double miss01) {
        for (MissClass each : values()) {
            if (miss01 < each.below01) {
                return each;
            }
        }
        return MOSTLY;
    }

    /** For a legend. */
    String words() {
        return words;
    }

    /** From stripe to stripe, px; 0 for none. */
    int stripePx() {
        return stripePx;
    }

    /** Whether stripes run both ways. */
    boolean crossed() {
        return crossed;
    }

    /** Of stripes and, faintly, of the ground. */
    Color color(Theme theme) {
        return switch (this) {
            case SELDOM -> ChartPalette.BLUISH_GREEN;
            case SOMETIMES -> theme.line();
            case OFTEN, MOSTLY -> theme.mark();
        };
    }
}
