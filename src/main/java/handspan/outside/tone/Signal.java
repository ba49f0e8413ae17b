package handspan.outside.tone;

import java.util.List;

/**
 * A short signal to the player: told apart by rhythm and by whether it rises or falls, so that it is known without
 * looking. Pitches lie where small loudspeakers carry and away from hum; they are A4 = 440 Hz and just steps from it.
 */
public enum Signal {
    /** A step is asked for: one tone. */
    BEGIN,
    /** A hold was captured: a fifth up. */
    CAPTURED,
    /** Not yet: twice the same low tone. */
    REFUSED,
    /** The last hold is taken again: a fifth down. */
    UNDONE,
    /** All done: three tones up, the last one long. */
    FINISHED;

    /**
     * One tone.
     *
     * @param hz its frequency
     * @param ms how long it sounds, attack and decay included
     */
    record Note(double hz, int ms) {}

    List<Note> notes() {
        return switch (this) {
            case BEGIN -> List.of(new Note(660, 130));
            case CAPTURED -> List.of(new Note(660, 90), new Note(990, 130));
            case REFUSED -> List.of(new Note(330, 100), new Note(330, 100));
            case UNDONE -> List.of(new Note(990, 90), new Note(660, 130));
            case FINISHED -> List.of(new Note(440, 110), new Note(550, 110), new Note(660, 300));
        };
    }
}
