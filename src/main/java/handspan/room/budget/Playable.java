package handspan.room.budget;

import handspan.music.tuning.ReferencePitch;
import handspan.music.tuning.ScaleLadder;
import handspan.music.tuning.Tuning;
import handspan.number.units.Cents;
import java.util.List;

/**
 * A tuning in a room and how often each of its notes is missed.
 *
 * @param tuning with its scale and range
 * @param chances of each of its notes, from low to high; at least one
 */
public record Playable(Tuning tuning, List<NoteChance> chances) {
    private static final double KEYS_PER_OCTAVE = Cents.PER_OCTAVE / ReferencePitch.CENTS_PER_KEY;

    /** Copies the chances. */
    public Playable {
        chances = List.copyOf(chances);
    }

    static Playable of(Reach reach, Tuning tuning) {
        return new Playable(tuning, NoteChance.of(reach, tuning));
    }

    /** From end to end, semitones; need not be whole. */
    public double semitones() {
        return tuning.curve().span();
    }

    /** The same in octaves. */
    public double octaves() {
        return semitones() / KEYS_PER_OCTAVE;
    }

    /** The note that is missed most. */
    public NoteChance worst() {
        return NoteChance.worst(chances);
    }

    /** What a note of it is called as it sounds. */
    public String noteName(int note) {
        return tuning.noteName(tuning.ladder(), note);
    }

    /** What the note that is missed most is called. */
    public String worstName() {
        return noteName(worst().note());
    }

    /** What its lowest note is called. */
    public String lowName() {
        return noteName(0);
    }

    /** What its highest note is called. */
    public String highName() {
        return noteName(chances.size() - 1);
    }

    /** Whether a range ends on notes of its scale, and has two at least. */
    static boolean endsOnNotes(Tuning tuning) {
        ScaleLadder ladder = tuning.ladder();
        double near = 1e-6;
        return ladder.size() > 1
                && Math.abs(ladder.key(0) - tuning.curve().lowKey()) < near
                && Math.abs(ladder.key(ladder.size() - 1) - tuning.curve().highKey()) < near;
    }
}
