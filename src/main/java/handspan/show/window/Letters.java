package handspan.show.window;

import java.util.Locale;

/** What letters are for; how large they are says the look's property file. */
enum Letters {
    /** To be read from 3 m: some 11 mm high on a usual screen, a fifth of a degree. */
    PROMPT,
    /** Why a ring does not fill. */
    WHY,
    /** What a page is about. */
    HEADING,
    /** Under a prompt. */
    UNDER,
    /** Stations along the edge. */
    STATION,
    /** What is said. */
    WORDS,
    /** Buttons, fields, tables, and whatever is small. */
    CONTROL;

    String key() {
        return "letters." + name().toLowerCase(Locale.ROOT);
    }
}
