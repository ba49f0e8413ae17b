package handspan.room.budget;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.music.tuning.Direction;
import handspan.music.tuning.PitchRange;
import handspan.music.tuning.Scale;
import handspan.music.tuning.ScaleLadder;
import handspan.music.tuning.Scales;
import handspan.music.tuning.Tonic;
import handspan.music.tuning.Tuning;
import handspan.room.Aim;
import handspan.room.Room;
import handspan.room.Zone;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class AdviserTest {
    private static final double LIMIT = Adviser.MOST_ASSUMED01;
    private static final Tuning USUAL = Tuning.usual();

    private static Adviser adviser(Room room) {
        return Adviser.of(room, Aim.ASSUMED);
    }

    static List<Scale> scales() {
        return Scales.all();
    }

    /**
     * By trying every key above the low end, apart from the search: the widest range keeps the limit, and no range that
     * ends on a higher note of the scale does.
     */
    @ParameterizedTest
    @MethodSource("scales")
    void oneMoreNoteOfTheScaleBreaksTheLimit(Scale scale) {
        Room room = AdviceRooms.plain();
        Playable widest = adviser(room).widest(scale, USUAL).orElseThrow();
        assertTrue(worst(room, widest.tuning()) <= LIMIT);
        // the scale over the whole keyboard says which keys are its notes
        ScaleLadder all = USUAL.withRange(57, 127).withScale(scale).ladder();
        int wider = 0;
        for (int note = 0; note < all.size(); note++) {
            long key = Math.round(all.key(note));
            boolean endsThere = Math.abs(all.key(note) - key) < 0.499;
            if (endsThere && key > widest.tuning().highKey() && key <= 57 + Adviser.MOST_KEYS) {
                assertTrue(worst(room, USUAL.withRange(57, (int) key).withScale(scale)) > LIMIT, "up to " + key);
                wider++;
            }
        }
        assertTrue(wider > 0, "nothing wider was tried");
    }

    private static double worst(Room room, Tuning tuning) {
        return NoteChance.of(room, tuning, Aim.ASSUMED).stream()
                .mapToDouble(NoteChance::miss01)
                .max()
                .orElseThrow();
    }

    /**
     * A map without uncertainty: a chromatic cell of n semitones over 400 mm reaches 200 / n mm to either side, and 2
     * Q(z) = 0.2 at z = 1.28155 (E. W. Weisstein, CRC Concise Encyclopedia of Mathematics, 1999: 80 % lie within
     * 1.28155). With 6 mm of aim n may be 200 / (6 x 1.28155) = 26.01, so 26; with 6.01 mm 25.97, so 25.
     */
    @ParameterizedTest
    @CsvSource({"6, 26", "6.01, 25", "12, 13", "13.1, 11"})
    void theWidestChromaticRangeIsThatOfTheHandCalculation(double aimMm, double semitones) {
        Playable widest = Adviser.of(AdviceRooms.exact(), new Aim(aimMm, 0))
                .widest(Scales.named("chromatic"), USUAL)
                .orElseThrow();
        assertEquals(semitones, widest.semitones());
        assertEquals("A3", widest.lowName());
    }

    @Test
    void theLowEndIsTheTonicNearestToTheTuningsLowEnd() {
        Tuning onD = new Tuning(
                "d",
                USUAL.reference(),
                USUAL.temperament(),
                USUAL.scale(),
                Tonic.parse("D"),
                new PitchRange(60, 72, Direction.HIGH_NEAR, 0),
                USUAL.snapping(),
                0,
                0);
        Playable widest =
                adviser(AdviceRooms.plain()).widest(Scales.named("dorian"), onD).orElseThrow();
        assertEquals("D4", widest.lowName());
        assertEquals(Direction.HIGH_NEAR, widest.tuning().direction());
        assertEquals(57, Adviser.tonicNear(USUAL.withRange(62, 80)));
        assertEquals(69, Adviser.tonicNear(USUAL.withRange(63, 80)), "of A3 and A4, equally near to Eb4, the higher");
    }

    @Test
    void aMeasuredAimIsHeldToTheStricterLimit() {
        Room room = AdviceRooms.exact();
        assertEquals(0.2, Adviser.of(room, new Aim(6, 0)).mostMiss01());
        assertEquals(0.1, Adviser.of(room, new Aim(6, 10)).mostMiss01());
    }

    @Test
    void theSentenceNamesAFewNotesAndAll() {
        String words = adviser(AdviceRooms.plain(new Zone(100, 330, 0.5, 0.5))).sentence(USUAL);
        assertTrue(words.startsWith("with an aim of 6.0 mm (assumed) this zone holds "), words);
        assertTrue(words.contains(" of minor-pentatonic; chromatic fits one octave"), words);
        String tiny = adviser(AdviceRooms.plain(new Zone(100, 110, 0.5, 0.5))).sentence(USUAL);
        assertTrue(tiny.contains("chromatic fits less than a fifth") || tiny.contains("does not fit at all"), tiny);
    }

    @Test
    void nominalMillimetresAreSaidToBeSo() {
        Room room = AdviceRooms.nominal();
        assertTrue(
                adviser(room).sentence(USUAL).endsWith("(its mm are nominal: near and far by ruler make this sure)"));
        assertFalse(adviser(AdviceRooms.plain()).sentence(USUAL).contains("nominal"));
    }

    @ParameterizedTest
    @CsvSource({
        "3, less than a fifth",
        "7, a fifth",
        "11.9, a fifth",
        "12, one octave",
        "17, one octave",
        "19, one and a half octaves",
        "24, two octaves",
        "31, two and a half octaves",
        "60, five octaves"
    })
    void intervalsAreNamedRoundedDown(double semitones, String words) {
        assertEquals(words, Adviser.span(semitones));
    }

    @Test
    void whatHelpsIsSortedAndNamesWhatItLeavesNoWorse() {
        Room room = AdviceRooms.plain(new Zone(100, 340, 0.5, 0.5));
        Advice advice = adviser(room).advice(USUAL, Scales.all());
        double now = advice.chosen().worst().miss01();
        assertEquals(Scales.all().size(), advice.scales().size());
        List<Double> chances = advice.help().stream().map(Advice.Help::miss01).toList();
        assertEquals(chances.stream().sorted().toList(), chances);
        // by two thousandths at least, which is what per cent show
        assertTrue(chances.stream().allMatch(chance -> chance < now - 0.002));
        String all = advice.help().stream().map(Advice.Help::what).collect(Collectors.joining("\n"));
        for (String named : List.of("aim to 3.0 mm", "300 mm", "range from", "pentatonic")) {
            assertTrue(all.contains(named), named + " is not in " + all);
        }
        // each figure again by a room that really is so
        double longer = worst(AdviceRooms.plain(new Zone(100, 400, 0.5, 0.5)), USUAL);
        assertEquals(longer, of(advice, "zone 25 %"), 1e-12);
        Playable widest = adviser(room).widest(USUAL.scale(), USUAL).orElseThrow();
        assertEquals(widest.worst().miss01(), of(advice, "range from A3 to " + widest.highName()), 1e-12);
    }

    /** Where all notes are hit often enough, a smaller range is no advice; and fewer notes are some of the same. */
    @Test
    void whatIsNoHelpIsNotListed() {
        Room room = AdviceRooms.plain();
        Tuning major = USUAL.withScale(Scales.named("major"));
        assertTrue(adviser(room).holds(adviser(room).playable(major)));
        String all = whats(adviser(room).advice(major, List.of()));
        assertFalse(all.contains("range from"), all);
        assertTrue(all.contains("major-pentatonic"), all);
        String locrian = whats(adviser(room).advice(USUAL.withScale(Scales.named("locrian")), List.of()));
        assertFalse(locrian.contains("pentatonic"), locrian);
    }

    private static String whats(Advice advice) {
        return advice.help().stream().map(Advice.Help::what).collect(Collectors.joining("\n"));
    }

    private static double of(Advice advice, String what) {
        return advice.help().stream()
                .filter(help -> help.what().contains(what))
                .findFirst()
                .orElseThrow()
                .miss01();
    }

    /**
     * Leverages of a parabola through five even points are 31, 13, 17, 13, 31 thirty-fifths (orthogonal polynomials; R.
     * A. Fisher, F. Yates, Statistical Tables, n = 5: sums of squares 10 and 14).
     */
    @Test
    void fiveHoldsByRulerAreAsGoodAsTheirParabola() {
        Reach reach = Reach.in(AdviceRooms.plain(), Aim.ASSUMED).byFiveRulerHolds();
        assertTrue(reach.isByRuler());
        int[] leverages = {31, 13, 17, 13, 31};
        for (int i = 0; i < leverages.length; i++) {
            double expected = 0.55 * Math.sqrt(leverages[i] / 35.0);
            assertEquals(
                    expected,
                    PitchBudget.at(reach.hand(), i / 4.0, 1).terms().get(0).cents(),
                    1e-9);
        }
    }

    @Test
    void aTuningThatAsksTooMuchIsWarnedAbout() {
        Room room = AdviceRooms.plain(new Zone(100, 340, 0.5, 0.5));
        String warning = Advice.warning(room, USUAL, Aim.ASSUMED).orElseThrow();
        assertTrue(warning.contains("chromatic fits one octave"), warning);
        assertTrue(Advice.warning(room, USUAL.withRange(57, 69), Aim.ASSUMED).isEmpty());
    }

    /**
     * By hand, for a map without uncertainty, an aim of 6 mm and a zone of L mm for n semitones: a chromatic note keeps
     * 0.2 from L / n = 2 x 6 x 1.28155 = 15.38 mm; a major one beside a semitone and a tone, Q(x) + Q(2 x) = 0.2 at x =
     * 0.95, from 11.4 mm; a pentatonic one between two tones from 7.69 mm.
     */
    @ParameterizedTest
    @CsvSource({
        "370, 24, chromatic",
        "365, 24, major",
        "275, 24, major",
        "270, 24, minor-pentatonic",
        "186, 24, minor-pentatonic",
        "183, 19, minor-pentatonic",
        "145, 12, major",
        "130, 12, minor-pentatonic",
        "85, 7, major",
        "60, 7, minor-pentatonic"
    })
    void aRoomStartsWithTheRichestTuningThatItHolds(double zoneMm, int span, String scale) {
        StartingTuning starting = StartingTuning.by(adviser(AdviceRooms.exact(zoneMm)));
        assertEquals(57, starting.playable().tuning().lowKey());
        assertEquals(57 + span, starting.playable().tuning().highKey(), starting.words());
        assertEquals(scale, starting.playable().tuning().scale().name());
        assertTrue(starting.holds());
    }

    @Test
    void aZoneTooShortForAnythingStartsWithTheSurestAndSaysSo() {
        StartingTuning starting = StartingTuning.by(adviser(AdviceRooms.plain(new Zone(100, 120, 0.5, 0.5))));
        assertFalse(starting.holds());
        assertTrue(starting.words().startsWith("no tuning keeps every note under"), starting.words());
        assertEquals(64, starting.playable().tuning().highKey());
    }
}
