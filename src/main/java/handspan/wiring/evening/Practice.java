package handspan.wiring.evening;

import handspan.music.practice.CourseWish;
import handspan.music.practice.NoteTally;
import java.util.List;

/**
 * Notes that are asked for one after another, and what came of the last run. Immutable.
 *
 * @param wish what is wanted of this run, or of the next one
 * @param player under whose name runs are kept; empty for none
 * @param running whether a run goes on, or its end is looked at while the instrument still plays
 * @param heard whether a note can be sounded on this machine
 * @param told what the last run was worth and what is kept of it, in words; empty before there is one
 * @param notes of that run, from the lowest
 * @param trouble why a run could not be, or not be kept; empty when it could
 */
public record Practice(
        CourseWish wish,
        String player,
        boolean running,
        boolean heard,
        List<String> told,
        List<NoteTally> notes,
        String trouble) {
    /** Copies the lists. */
    public Practice {
        told = List.copyOf(told);
        notes = List.copyOf(notes);
    }

    static Practice first() {
        return new Practice(CourseWish.USUAL, "", false, false, List.of(), List.of(), "");
    }

    Practice wanting(CourseWish other) {
        return new Practice(other, player, running, heard, told, notes, trouble);
    }

    Practice of(String name) {
        return new Practice(wish, name, running, heard, told, notes, trouble);
    }

    Practice begun() {
        return new Practice(wish, player, true, heard, List.of(), List.of(), "");
    }

    Practice ended() {
        return new Practice(wish, player, false, heard, told, notes, trouble);
    }

    Practice told(List<String> words, List<NoteTally> tallied) {
        return new Practice(wish, player, running, heard, words, tallied, trouble);
    }

    Practice troubled(String words) {
        return new Practice(wish, player, running, heard, told, notes, words);
    }

    Practice heard(boolean now) {
        return new Practice(wish, player, running, now, told, notes, trouble);
    }

    /** Whether the name of the note that is asked for is shown: also where it should sound and can't. */
    public boolean showsName() {
        return wish.asking().shows() || !heard;
    }
}
