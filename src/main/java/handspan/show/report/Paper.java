package handspan.show.report;

import java.util.Locale;

/** Paper that printers hold. */
public enum Paper {
    /** 210 x 297 mm (ISO 216:2007, A series, clause from memory). */
    A4("A4", 210, 297),
    /** 8.5 x 11 inches (ANSI/ASME Y14.1, size A; clause from memory), an inch being 25.4 mm. */
    LETTER("US Letter", 215.9, 279.4);

    /** How much at each edge a printer is trusted to leave white, mm (common practice, from memory: 3 to 6 mm). */
    public static final double UNPRINTED_MM = 10;

    private final String title;
    private final double shortMm;
    private final double longMm;

    Paper(String title, double shortMm, double longMm) {
        this.title = title;
        this.shortMm = shortMm;
        this.longMm = longMm;
    }

    /** The word on the command line: {@code a4} or {@code letter}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** What people call it. */
    public String title() {
        return title;
    }

    /** Upright. */
    public PageSize portrait() {
        return new PageSize(shortMm, longMm);
    }

    /** On its side. */
    public PageSize landscape() {
        return new PageSize(longMm, shortMm);
    }

    /**
     * The paper with a word.
     *
     * @throws IllegalArgumentException when it is none
     */
    public static Paper parse(String word) {
        for (Paper paper : values()) {
            if (paper.word().equals(word.toLowerCase(Locale.ROOT))) {
                return paper;
            }
        }
        throw new IllegalArgumentException("paper '" + word + "' (a4, letter): name one of these");
    }
}
