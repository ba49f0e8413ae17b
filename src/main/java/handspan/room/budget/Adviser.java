package handspan.room.budget;

import handspan.music.tuning.Scale;
import handspan.music.tuning.Scales;
import handspan.music.tuning.Tuning;
import handspan.number.units.Figures;
import handspan.room.Aim;
import handspan.room.Room;
import java.util.List;
import java.util.Optional;

/**
 * Says which scales a room can hold for a player, and over which range: every note must be hit often enough.
 *
 * <p>Chances come from {@link NoteChance}. The low end of a range is the tonic at or nearest to the low end of a given
 * tuning, whose key, temperament, spread and direction are kept; the high end is any note of the scale above.
 */
public final class Adviser {
    /** Largest share of reaches that may miss, while the player's aim is assumed (this project's own choice). */
    public static final double MOST_ASSUMED01 = 0.2;

    /** The same once it is measured: what is known better may be asked more of. */
    public static final double MOST_MEASURED01 = 0.1;

    /** Widest range that is looked at, semitones. */
    static final int MOST_KEYS = 60;

    static final int OCTAVE_KEYS = 12;
    private static final int MOST_KEY = 127;

    /** The scale of few notes that advice speaks of. */
    static final String FEW_NOTES = "minor-pentatonic";

    private final Reach reach;
    private final double mostMiss01;

    Adviser(Reach reach, double mostMiss01) {
        if (!(mostMiss01 > 0 && mostMiss01 < 1)) {
            throw new IllegalArgumentException("a share of " + mostMiss01
                    + " of reaches that may miss (above 0, under 1; 0.2 is usual, 0.1 with a measured aim)");
        }
        this.reach = reach;
        this.mostMiss01 = mostMiss01;
    }

    /** An adviser with the usual limit for how the aim is known. */
    public static Adviser of(Room room, Aim aim) {
        return of(room, aim, aim.isMeasured() ? MOST_MEASURED01 : MOST_ASSUMED01);
    }

    /**
     * An adviser with a limit.
     *
     * @param mostMiss01 largest share of reaches for the worst note that may miss, above 0, under 1
     */
    public static Adviser of(Room room, Aim aim, double mostMiss01) {
        return new Adviser(Reach.in(room, aim), mostMiss01);
    }

    /** How a tuning plays. */
    public Playable playable(Tuning tuning) {
        return Playable.of(reach, tuning);
    }

    /** Whether its worst note is hit often enough. */
    public boolean holds(Playable playable) {
        return playable.worst().miss01() <= mostMiss01;
    }

    /** Limit of the worst note's chance. */
    public double mostMiss01() {
        return mostMiss01;
    }

    /**
     * The note that could be promised least if five holds by ruler, evenly spread, had been fitted.
     *
     * @return empty when the zone is known by ruler already
     */
    public Optional<NoteBudget> byFiveRulerHolds(Tuning tuning) {
        return reach.isByRuler()
                ? Optional.empty()
                : Optional.of(
                        NoteBudget.worst(NoteBudget.of(reach.byFiveRulerHolds().hand(), tuning)));
    }

    /** Whose aim it is. */
    public Aim aim() {
        return reach.aim();
    }

    /**
     * The widest range of a scale whose worst note is hit often enough.
     *
     * @param scale wanted
     * @param like key, place on the keyboard, temperament, spread and direction
     * @return empty when not even its two lowest notes can be told apart, or the scale does not fit the temperament
     */
    public Optional<Playable> widest(Scale scale, Tuning like) {
        int low = tonicNear(like);
        for (int high = Math.min(MOST_KEY, low + MOST_KEYS); high > low; high--) {
            Optional<Playable> playable = ranged(scale, like, low, high)
                    .filter(Playable::endsOnNotes)
                    .map(this::playable)
                    .filter(this::holds);
            if (playable.isPresent()) {
                return playable;
            }
        }
        return Optional.empty();
    }

    static Optional<Tuning> ranged(Scale scale, Tuning like, int low, int high) {
        try {
            return Optional.of(like.withRange(low, high).withScale(scale));
        } catch (IllegalArgumentException e) {
            // two notes of the scale are one in this temperament
            return Optional.empty();
        }
    }

    /** The key of a tuning's tonic that is nearest to its low end, the higher of two. */
    static int tonicNear(Tuning tuning) {
        int up = Math.floorMod(tuning.tonic().pitchClass() - tuning.lowKey(), OCTAVE_KEYS);
        int key = tuning.lowKey() + (up <= OCTAVE_KEYS / 2 ? up : up - OCTAVE_KEYS);
        if (key < 0) {
            return key + OCTAVE_KEYS;
        }
        return key > MOST_KEY - OCTAVE_KEYS ? key - OCTAVE_KEYS : key;
    }

    /**
     * All that there is to say.
     *
     * @param tuning the chosen one
     * @param scales of which the widest range is wanted
     */
    public Advice advice(Tuning tuning, List<Scale> scales) {
        List<Advice.ForScale> widest = scales.stream()
                .map(scale -> new Advice.ForScale(scale, widest(scale, tuning)))
                .toList();
        return new Advice(
                aim(),
                mostMiss01,
                sentence(tuning),
                widest,
                playable(tuning),
                new Remedies(reach, mostMiss01).of(tuning));
    }

    /** In a sentence: what the zone holds of a scale of few notes, of the tuning's, and of all notes. */
    public String sentence(Tuning tuning) {
        Scale few = Scales.named(FEW_NOTES);
        Scale every = Scales.named("chromatic");
        StringBuilder words = new StringBuilder("with an aim of " + aim().words() + " this zone holds ");
        Optional<Playable> fewWidest = widest(few, tuning);
        words.append(fewWidest
                        .map(playable -> span(playable.semitones()) + " of ")
                        .orElse("no "))
                .append(few.name());
        if (!tuning.scale().equals(few) && !tuning.scale().isEveryNote()) {
            words.append("; ").append(fits(tuning.scale(), tuning));
        }
        words.append("; ").append(fits(every, tuning));
        if (reach.hand().scaledTravel()) {
            words.append(" (its mm are nominal: near and far by ruler make this sure)");
        }
        return words.toString();
    }

    private String fits(Scale scale, Tuning like) {
        return widest(scale, like)
                .map(playable -> scale.name() + " fits " + span(playable.semitones()))
                .orElse(scale.name() + " does not fit at all");
    }

    /** An interval in words, rounded down to what a player would name. */
    static String span(double semitones) {
        int keys = (int) Math.floor(semitones + 1e-6);
        if (keys < 7) {
            return "less than a fifth";
        }
        if (keys < OCTAVE_KEYS) {
            return "a fifth";
        }
        String[] numbers = {"", "one", "two", "three", "four", "five"};
        int octaves = keys / OCTAVE_KEYS;
        boolean half = keys % OCTAVE_KEYS >= OCTAVE_KEYS / 2;
        return numbers[octaves] + (half ? " and a half" : "") + (octaves > 1 || half ? " octaves" : " octave");
    }

    /**
     * Why a tuning asks too much of a player, with what would fit.
     *
     * @return empty when its worst note is hit often enough
     */
    public Optional<String> warning(Tuning tuning) {
        Playable playable = playable(tuning);
        if (holds(playable)) {
            return Optional.empty();
        }
        return Optional.of("with an aim of " + aim().words() + " " + playable.worstName() + " of tuning '"
                + tuning.name() + "' is missed by "
                + Figures.percent(playable.worst().miss01()) + " of reaches (at most "
                + Figures.percent(mostMiss01) + " is wanted): " + fits(tuning.scale(), tuning)
                + " here, 'handspan advise' says what else would help");
    }
}
