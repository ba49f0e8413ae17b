package handspan.show.scene;

/** What a player can fill in or choose from a list. */
public enum Ask {
    /** A source that is not in the list. */
    SOURCE,
    /** Link speed of a port. */
    BAUD,
    /** Which number is the pitch hand. */
    PITCH_HAND,
    /** Which number is the level hand. */
    LEVEL_HAND,
    /** Targets, parted by commas. */
    TARGETS,
    /** Name of the next room. */
    ROOM_NAME,
    /** True distances of a ruler, mm, parted by commas. */
    RULER_MM,
    /** Notes that are held by ear, parted by commas. */
    NOTES_BY_EAR,
    /** Whether ten unaided reaches follow. */
    REACHES,
    /** Which tuning is worked on. */
    TUNING,
    /** What it is called. */
    TUNING_NAME,
    /** Scale of the tuning. */
    SCALE,
    /** Tonic of the tuning. */
    KEY,
    /** Lowest note. */
    LOW,
    /** Highest note. */
    HIGH,
    /** How notes are spread. */
    CURVE,
    /** Which end is high. */
    DIRECTION,
    /** How pitch is drawn to notes. */
    SNAP,
    /** How strongly pull draws, percent. */
    STRENGTH_PERCENT,
    /** Where the notes between two octaves lie. */
    TEMPERAMENT,
    /** Steps of a scale of one's own, cents or ratios parted by commas. */
    STEPS,
    /** Semitones added to all. */
    TRANSPOSE,
    /** Cents added to all. */
    TRIM_CENTS,
    /** Steadier or quicker. */
    QUICKNESS,
    /** Reference pitch, Hz. */
    A4_HZ,
    /** Level at the knee, dB. */
    FLOOR_DB,
    /** Highest level, dB. */
    CEILING_DB,
    /** Place of the knee, percent of the zone. */
    KNEE_PERCENT,
    /** How fast level may rise, dB a millisecond. */
    RISE_DB_PER_MS,
    /** Which end is loud. */
    LOUD_END,
    /** What becomes of the note when the hand leaves. */
    LEAVING,
    /** How long that fade takes, ms. */
    FADE_MS,
    /** How many notes are practised, or which. */
    COURSE_NOTES,
    /** How they are asked for. */
    ASKED_BY,
    /** Whether the way to them is shown. */
    WAY_SHOWN,
    /** Under whose name practice is kept. */
    PLAYER,
    /** Which of several charts is looked at. */
    CHART
}
