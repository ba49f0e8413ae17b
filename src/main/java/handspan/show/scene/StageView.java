package handspan.show.scene;

import java.util.function.UnaryOperator;

/**
 * What is to be read on a stage.
 *
 * @param note that sounds, or a dash
 * @param cents from it; 0 where nothing sounds
 * @param centsWords the same in words, or the way there; empty where there is none to show
 * @param pitchWords frequency in Hz; empty where nothing sounds
 * @param level01 gain between silence and the ceiling, by dB, 0..1
 * @param levelWords level in dB below full
 * @param state one word: playing, away, muted, lost
 * @param stateTone how that is meant
 * @param stateWords why, or what to do; may be empty
 * @param handPresent whether the pitch hand is in its zone
 * @param place01 where in it
 * @param link in a few words
 * @param linkTone how that is meant
 * @param room its name
 * @param tuning its name, with what was added to it
 * @param hint what is worth a word between songs; may be empty
 * @param trouble with targets or sensors; may be empty
 * @param pitchHelp whether the distance from the note is shown
 */
public record StageView(
        String note,
        double cents,
        String centsWords,
        String pitchWords,
        double level01,
        String levelWords,
        String state,
        Tone stateTone,
        String stateWords,
        boolean handPresent,
        double place01,
        String link,
        Tone linkTone,
        String room,
        String tuning,
        String hint,
        String trouble,
        boolean pitchHelp) {
    /** The same with what is said in other words. */
    StageView saying(UnaryOperator<String> words) {
        return new StageView(
                note,
                cents,
                centsWords,
                pitchWords,
                level01,
                levelWords,
                state,
                stateTone,
                words.apply(stateWords),
                handPresent,
                place01,
                link,
                linkTone,
                room,
                tuning,
                words.apply(hint),
                words.apply(trouble),
                pitchHelp);
    }

    /**
     * The same, asking for a note, without a word of how far the hand is from it.
     *
     * @param asked its name, or what stands in its place
     * @param words beside the state
     * @param hand whether there is one
     */
    StageView askingFor(String asked, String words, boolean hand) {
        return new StageView(
                asked,
                0,
                "",
                "",
                level01,
                levelWords,
                state,
                stateTone,
                stateWords.isEmpty() ? words : words + "; " + stateWords,
                hand,
                place01,
                link,
                linkTone,
                room,
                tuning,
                hint,
                trouble,
                false);
    }

    /**
     * The same, showing the way to the note.
     *
     * @param offCents how far the hand is from it
     * @param way of the hand to it, in words
     */
    StageView showing(double offCents, String way) {
        return new StageView(
                note,
                offCents,
                way,
                "",
                level01,
                levelWords,
                state,
                stateTone,
                stateWords,
                handPresent,
                place01,
                link,
                linkTone,
                room,
                tuning,
                hint,
                trouble,
                true);
    }
}
