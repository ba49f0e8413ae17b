package handspan.music.passage;

import handspan.number.units.Nanos;
import java.util.List;

/**
 * What the time of a passage went into, from its first sound to its last.
 *
 * @param passageS all of it
 * @param onNotesS on notes
 * @param glidingS sounding between notes
 * @param silentS a hand there, but its level at nothing
 * @param awayS no hand
 * @param rests how often the hand was away
 * @param losses how often the board did not send
 */
public record TimeUse(
        double passageS, double onNotesS, double glidingS, double silentS, double awayS, int rests, int losses) {
    /** Sounding, on notes and between. */
    public double soundingS() {
        return onNotesS + glidingS;
    }

    static TimeUse of(List<Moment> moments, List<Sounding> soundings, List<Visit> visits) {
        double onNotes = visits.stream().mapToDouble(Visit::seconds).sum();
        double sounding = soundings.stream()
                .mapToDouble(each -> each.size() * Sounding.STEP_S)
                .sum();
        int first = 0;
        while (first < moments.size() && !moments.get(first).sounds()) {
            first++;
        }
        int last = moments.size() - 1;
        while (last > first && !moments.get(last).sounds()) {
            last--;
        }
        double silent = 0;
        double away = 0;
        int rests = 0;
        int losses = 0;
        for (int i = first; i < last; i++) {
            Moment here = moments.get(i);
            Moment next = moments.get(i + 1);
            double seconds = Nanos.toSeconds(next.timeNanos() - here.timeNanos());
            silent += here.hand() && !here.sounds() ? seconds : 0;
            away += here.hand() ? 0 : seconds;
            rests += here.hand() && !next.hand() ? 1 : 0;
            losses += !here.lost() && next.lost() ? 1 : 0;
        }
        double passage = last <= first
                ? 0
                : Nanos.toSeconds(
                        moments.get(last).timeNanos() - moments.get(first).timeNanos());
        return new TimeUse(passage, onNotes, Math.max(0, sounding - onNotes), silent, away, rests, losses);
    }
}
