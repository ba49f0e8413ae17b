package handspan.show.scene;

import handspan.instrument.line.CommaRule;
import handspan.wiring.evening.HoldPurpose;

/** What a player wants. */
public sealed interface Wish {
    /** To be at another station. */
    record Go(Station station) implements Wish {}

    /** To fill something in, or to choose it from a list. */
    record Say(Ask what, String value) implements Wish {}

    /** To open a source, as it is written on the command line. */
    record Open(String source) implements Wish {}

    /** To say what a comma between digits is. */
    record Comma(CommaRule rule) implements Wish {}

    /** To have holds taken. */
    record Measure(HoldPurpose purpose) implements Wish {}

    /** To load a room. */
    record Load(String room) implements Wish {}

    /** What has to do with rooms that are kept, and with the tunings of the one in hand. */
    sealed interface OfRooms extends Wish {}

    /** To look at a kept room more closely. */
    record Look(String room) implements OfRooms {}

    /** To compare the room that is looked at with another kept one. */
    record CompareWith(String room) implements OfRooms {}

    /** To compare an earlier version of the room that is looked at with what it is now. */
    record CompareVersion(int number) implements OfRooms {}

    /** To bring an earlier version back; asks where something unsaved would be lost. */
    record Restore(String room, int number) implements OfRooms {}

    /** To do what was asked about, letting go of what is unsaved. */
    record DoAnyway() implements OfRooms {}

    /** To have another tuning play. */
    record PlayTuning(String name) implements OfRooms {}

    /** Wishes of rooms and tunings that need no more words. */
    enum RoomAct implements OfRooms {
        /** To look one step less closely. */
        STEP_BACK,
        /** To compare the room that is looked at with the one in hand. */
        COMPARE_WITH_HAND,
        /** To see what is more seldom asked for on the page, or the rest again. */
        TURN_FURTHER,
        /** To add a tuning like the one that is worked on. */
        ADD_TUNING,
        /** To take it out of the room. */
        REMOVE_TUNING,
        /** To make it the first. */
        FIRST_TUNING
    }

    /** To say whether the patch was heard. */
    record Heard(boolean yes) implements Wish {}

    /** To have the pitch higher or lower by semitones. */
    record Shift(int semitones) implements Wish {}

    /** To have the hand followed more quickly; below 0, more steadily. */
    record Quicken(double steps) implements Wish {}

    /** To have the recording that runs go to a place, seconds from its start. */
    record Jump(double seconds) implements Wish {}

    /** To have it go on by so many seconds; below 0, back. */
    record Skip(double seconds) implements Wish {}

    /** Wishes that need no more words. */
    enum Plain implements Wish {
        /** To have ports looked for. */
        LOOK_FOR_PORTS,
        /** To close the instrument. */
        LEAVE,
        /** To find the hands by moving them. */
        FIND_HANDS,
        /** To take the last hold again. */
        UNDO,
        /** To end holds without a room. */
        STOP_HOLDS,
        /** To try the patch. */
        TRY_PATCH,
        /** To have silence now. */
        SILENCE,
        /** To begin to play, muted. */
        PLAY,
        /** To let sound through. */
        LET_SOUND,
        /** To be asked for notes, while it plays, muted. */
        PRACTISE,
        /** To hear the note again that is asked for. */
        HEAR_NOTE,
        /** To end playing. */
        STOP_PLAYING,
        /** To go to the next tuning. */
        NEXT_TUNING,
        /** To go to the one before. */
        PREVIOUS_TUNING,
        /** To have the tuning as it is kept. */
        AS_KEPT,
        /** To take the present light as open. */
        TAKE_LIGHT,
        /** To keep the room. */
        SAVE,
        /** To have the kept rooms listed. */
        LIST_ROOMS,
        /** To see the stage alone, or the stations again. */
        TURN_STAGE,
        /** To see how far pitch is from its note, or not. */
        TURN_PITCH_HELP,
        /** To close the window; asks where something is unsaved. */
        CLOSE,
        /** To save, then close. */
        SAVE_AND_CLOSE,
        /** To close all the same. */
        CLOSE_ANYWAY,
        /** To stay, and to keep the room in hand. */
        STAY,
        /** To have the recording that runs stand where it is, or go on. */
        TURN_TAKE,
        /** To have what the board sends recorded, or no more. */
        TURN_RECORDING,
        /** To have the sensors judged. */
        SURVEY,
        /** To see no more of that. */
        END_SURVEY,
        /** To have it dark, or light. */
        TURN_DARK
    }
}
