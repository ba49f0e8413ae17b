package handspan.show.window;

import java.util.Locale;

/** What something in the window is coloured for; which colour that is says the look's property file. */
enum Ink {
    /** Behind all. */
    GROUND,
    /** Behind the stations, the foot, tables and the stage. */
    RAISED,
    /** Lines that only part or hold. */
    LINES,
    /** Words. */
    TEXT,
    /** Words beside the point. */
    QUIET_TEXT,
    /** What fills: a ring, a level, what comes next. */
    FILL,
    /** Words on that. */
    ON_FILL,
    /** What moves with pitch. */
    NEEDLE,
    /** Where a note is. */
    LIMIT,
    /** As it should be. */
    GOOD,
    /** Worth a look; lets sound through. */
    LOOK,
    /** Words on that. */
    ON_LOOK,
    /** In the way. */
    BAD;

    String key() {
        return "ink." + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
