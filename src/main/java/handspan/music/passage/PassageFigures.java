package handspan.music.passage;

import handspan.music.level.LevelCurve;
import handspan.music.tuning.ReferencePitch;
import handspan.music.tuning.ScaleLadder;
import handspan.music.tuning.Tuning;
import java.util.ArrayList;
import java.util.List;

/**
 * How in tune a passage was. A note is the note of the scale in whose cell pitch stayed; errors are counted from it.
 *
 * @param time what the time went into
 * @param all how far whatever sounded, glides included, lay off the nearest note
 * @param sound the same on notes alone
 * @param hand on notes, what the hand alone would have been off them, without snapping
 * @param wobble of still notes, each about its own mean
 * @param vibrato where it was
 * @param level what of it was used
 * @param visits all notes in the order in which they were played
 * @param notes the same by note, lowest first
 */
public record PassageFigures(
        TimeUse time,
        CentsOff all,
        CentsOff sound,
        CentsOff hand,
        Wobble wobble,
        VibratoUse vibrato,
        LevelUse level,
        List<Visit> visits,
        List<PlayedNote> notes) {
    /** Copies the lists. */
    public PassageFigures {
        visits = List.copyOf(visits);
        notes = List.copyOf(notes);
    }

    /**
     * Measures a passage.
     *
     * @param moments in the order of time
     * @param tuning that was played in
     * @param curve of the level
     */
    public static PassageFigures of(List<Moment> moments, Tuning tuning, LevelCurve curve) {
        ScaleLadder ladder = tuning.ladder();
        List<Sounding> soundings = Sounding.in(moments);
        CentsOff all = CentsOff.NONE;
        for (Sounding sounding : soundings) {
            for (int i = 0; i < sounding.size(); i++) {
                double cents = sounding.soundCents(i);
                int note = ladder.nearest(cents / ReferencePitch.CENTS_PER_KEY - tuning.shiftKeys());
                all = all.and(cents - noteCents(tuning, ladder, note));
            }
        }
        List<Visit> visits = visits(soundings, tuning, ladder);
        return new PassageFigures(
                TimeUse.of(moments, soundings, visits),
                all,
                visits.stream().map(Visit::sound).reduce(CentsOff.NONE, CentsOff::and),
                visits.stream().map(Visit::hand).reduce(CentsOff.NONE, CentsOff::and),
                visits.stream().map(Visit::wobble).reduce(Wobble.NONE, Wobble::and),
                VibratoUse.of(visits),
                LevelUse.of(soundings, curve),
                visits,
                notes(visits, tuning, ladder));
    }

    private static double noteCents(Tuning tuning, ScaleLadder ladder, int note) {
        return (ladder.key(note) + tuning.shiftKeys()) * ReferencePitch.CENTS_PER_KEY;
    }

    private static List<Visit> visits(List<Sounding> soundings, Tuning tuning, ScaleLadder ladder) {
        List<List<Stay>> stays = soundings.stream()
                .map(sounding -> Stay.in(sounding, ladder, tuning.shiftKeys()))
                .toList();
        long searched = stays.stream()
                .flatMap(List::stream)
                .filter(stay -> VibratoSearch.isLongEnough(stay.size()))
                .count();
        double chance01 = VibratoUse.CHANCE01 / Math.max(1, searched);
        List<Visit> visits = new ArrayList<>();
        for (int i = 0; i < soundings.size(); i++) {
            for (Stay stay : stays.get(i)) {
                visits.add(Visit.of(soundings.get(i), stay, noteCents(tuning, ladder, stay.note()), chance01));
            }
        }
        return visits;
    }

    private static List<PlayedNote> notes(List<Visit> visits, Tuning tuning, ScaleLadder ladder) {
        List<PlayedNote> notes = new ArrayList<>();
        for (int note = 0; note < ladder.size(); note++) {
            int here = note;
            List<Visit> its =
                    visits.stream().filter(visit -> visit.note() == here).toList();
            if (!its.isEmpty()) {
                notes.add(new PlayedNote(
                        note,
                        tuning.noteName(ladder, note),
                        tuning.reference().hz(ladder.key(note) + tuning.shiftKeys()),
                        its.size(),
                        its.stream().mapToDouble(Visit::seconds).sum(),
                        its.stream().map(Visit::sound).reduce(CentsOff.NONE, CentsOff::and),
                        its.stream().map(Visit::hand).reduce(CentsOff.NONE, CentsOff::and),
                        its.stream().map(Visit::wobble).reduce(Wobble.NONE, Wobble::and)));
            }
        }
        return notes;
    }

    /** Notes begun in a minute of the passage; NaN where there is none. */
    public double notesPerMin() {
        return visits.size() * 60 / time.passageS();
    }
}
