package handspan.music.passage;

import java.util.Optional;

/**
 * A note that was played, from the end of one glide to the beginning of the next.
 *
 * @param note of the tuning's ladder
 * @param atS when it began, s on the session's clock
 * @param seconds how long
 * @param sound how far what sounded lay off the note
 * @param hand how far the hand alone would have
 * @param wobble of its still part: what is left when the first 0.4 s are left out, where that is 0.3 s and more and no
 *     vibrato was found; else of nothing
 * @param vibrato where one was found
 */
public record Visit(
        int note, double atS, double seconds, CentsOff sound, CentsOff hand, Wobble wobble, Optional<Vibrato> vibrato) {
    /** A hand comes to rest, and where snapping waits for that, its note is drawn in. */
    private static final int ARRIVING = (int) Math.round(0.4 / Sounding.STEP_S);

    private static final int LEAST_STILL = (int) Math.round(0.3 / Sounding.STEP_S);

    /**
     * Measures one.
     *
     * @param noteCents where the note is, above key 0
     * @param vibratoChance01 that noise alone may be taken for vibrato
     */
    static Visit of(Sounding sounding, Stay stay, double noteCents, double vibratoChance01) {
        double[] sound = sounding.sound(stay.from(), stay.to());
        Optional<Vibrato> vibrato = VibratoSearch.in(sound, vibratoChance01);
        boolean still = stay.size() - ARRIVING >= LEAST_STILL && vibrato.isEmpty();
        return new Visit(
                stay.note(),
                sounding.timeS(stay.from()),
                stay.size() * Sounding.STEP_S,
                CentsOff.of(sound, noteCents),
                CentsOff.of(sounding.hand(stay.from(), stay.to()), noteCents),
                still ? Wobble.of(sounding.sound(stay.from() + ARRIVING, stay.to())) : Wobble.NONE,
                vibrato);
    }

    /** Whether it was long enough to be searched for vibrato. */
    boolean isSearched() {
        return VibratoSearch.isLongEnough((int) Math.round(seconds / Sounding.STEP_S));
    }
}
