package handspan.music.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.music.tuning.Direction;
import handspan.music.tuning.ReferencePitch;
import handspan.music.tuning.Scales;
import handspan.music.tuning.Snap;
import handspan.music.tuning.Tuning;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** C major from C4 to C5 over the zone: 60 62 64 65 67 69 71 72, so that a place of 1/12 is a semitone. */
class TallyTest {
    private static final Tuning MAJOR = new Tuning(
            "first", ReferencePitch.A440, Scales.named("major"), 0, 60, 72, Direction.HIGH_FAR, Snap.FREE, 0, 0);

    private static Attempt attempt(int note, double cents, double mm, double seconds, boolean hit) {
        return new Attempt(WantedNote.of(MAJOR, 1, note), Optional.of(new Stop(cents, mm, 0.3, seconds, hit)));
    }

    private static Attempt late(int note) {
        return new Attempt(WantedNote.of(MAJOR, 1, note), Optional.empty());
    }

    private static PracticeRun run(List<Attempt> attempts) {
        return new PracticeRun("2026-01-01T00:00:00Z", "hall", "first", Asking.NAME, true, Tally.of(attempts));
    }

    @Test
    void aNoteKnowsItsNamePlaceAndPitch() {
        WantedNote a = WantedNote.of(MAJOR, 3, 5);
        assertEquals("A4", a.name());
        assertEquals(440, a.hz(), 1e-9);
        assertEquals(0.75, a.place01(), 1e-12);
        WantedNote up = WantedNote.of(MAJOR.shifted(2, 50), 1, 5);
        assertEquals("B4", up.name());
        // 2.5 semitones above A4: 440 * 2^(2.5/12)
        assertEquals(508.355, up.hz(), 1e-3);
    }

    /** The cell of F4 (65) ends at 64.5 and 66: half a semitone below, a whole one above. */
    @Test
    void centsOffAndTheCellGoByPlace() {
        WantedNote f = WantedNote.of(MAJOR, 1, 3);
        assertEquals(90, f.offCents(MAJOR, (5 + 0.9) / 12), 1e-9);
        assertTrue(f.holds(MAJOR, (5 + 0.9) / 12));
        assertFalse(f.holds(MAJOR, (5 + 1.1) / 12));
        assertTrue(f.holds(MAJOR, (5 - 0.4) / 12));
        assertFalse(f.holds(MAJOR, (5 - 0.6) / 12));
    }

    /**
     * Cents 30, -10, 40, -120: mean -15, mean square (900 + 100 + 1600 + 14400) / 4 = 4250; mm 3, -1, 4, -12: mean
     * -1.5, mean square 170 / 4 = 42.5; the middle of 1, 2, 4, 9 s is 3 s. One ran out of time.
     */
    @Test
    void figuresOfARunByHand() {
        Tally tally = Tally.of(List.of(
                attempt(0, 30, 3, 2, true),
                attempt(1, -10, -1, 1, true),
                attempt(0, 40, 4, 9, true),
                attempt(3, -120, -12, 4, false),
                late(2)));
        Accuracy accuracy = tally.accuracy().orElseThrow();
        assertEquals(-15, accuracy.meanCents(), 1e-12);
        assertEquals(Math.sqrt(4250), accuracy.rmsCents(), 1e-12);
        assertEquals(-1.5, accuracy.meanMm(), 1e-12);
        assertEquals(Math.sqrt(42.5), accuracy.rmsMm(), 1e-12);
        assertEquals(3, accuracy.medianSeconds(), 1e-12);
        assertEquals(0.6, tally.hit01(), 1e-12);
        assertEquals(
                List.of("C4", "D4", "E4", "F4"),
                tally.notes().stream().map(NoteTally::name).toList());
        assertEquals(
                new NoteTally(60, "C4", 2, 2, 2, Math.sqrt(1250)), tally.notes().get(0));
        assertEquals("F4", tally.worst().orElseThrow().name());
        assertEquals("D4", tally.best().orElseThrow().name());
    }

    @Test
    void aRunInWhichNothingWasFoundHasNoAccuracy() {
        Tally tally = Tally.of(List.of(late(1), late(2)));
        assertTrue(tally.accuracy().isEmpty());
        assertEquals(0, tally.hit01());
        assertEquals("", run(List.of(late(1))).comparedWith(run(List.of(late(1)))));
    }

    @Test
    void aRunIsComparedWithTheLastOneOfItsKind() {
        PracticeRun first = run(List.of(attempt(0, 51, 5, 3, true)));
        PracticeRun deaf = new PracticeRun("2026-01-02", "hall", "first", Asking.SOUND, false, first.tally());
        PracticeRun empty = run(List.of(late(1)));
        PracticeRun now = run(List.of(attempt(0, 38, 4, 2.5, true)));
        assertEquals(Optional.of(first), now.lastLike(List.of(first, deaf, empty)));
        assertEquals(
                "rms 38 cents, was 51 last time; 2.5 s a note, was 3.0; 100 % hit, was 100", now.comparedWith(first));
    }

    /** F4 asked 8 times and missed 8 times weighs 1 + 3 * 8/10; one miss of one weighs 1 + 3 * 1/3. */
    @Test
    void weakNotesWeighMore() {
        PracticeRun run = run(List.of(attempt(3, 200, 9, 1, false), attempt(1, 5, 0, 1, true)));
        List<PracticeRun> eight = Collections.nCopies(8, run);
        assertEquals(List.of(1.0, 1.0, 1.0, 3.4, 1.0, 1.0, 1.0, 1.0), WeakNotes.weights(MAJOR, "hall", eight));
        assertEquals(2.0, WeakNotes.weights(MAJOR, "hall", List.of(run)).get(3));
        assertEquals(1.0, WeakNotes.weights(MAJOR, "attic", eight).get(3));
        assertEquals(1.0, WeakNotes.weights(MAJOR.named("other"), "hall", eight).get(3));
    }

    @Test
    void waysOfAskingHaveWords() {
        for (Asking asking : Asking.values()) {
            assertEquals(asking, Asking.parse(asking.word()));
            assertTrue(asking.shows() || asking.sounds());
        }
    }

    @Test
    void figuresThatCannotBeAreRefused() {
        refused("stop off by", () -> new Stop(Double.NaN, 0, 0, 0, true));
        refused("stop off by", () -> new Stop(0, 0, -1, 0, true));
        refused("stop off by", () -> new Stop(0, 0, 0, -1, true));
        refused("accuracy of", () -> new Accuracy(0, -1, 0, 0, 0));
        refused("accuracy of", () -> new Accuracy(Double.NaN, 0, 0, 0, 0));
        refused("accuracy of no stop", () -> Accuracy.of(List.of()));
        refused("asked 1, reached 2", () -> new NoteTally(60, "C4", 1, 2, 0, 0));
        refused("asked 0", () -> new NoteTally(60, "C4", 0, 0, 0, 0));
        refused("rms -1.0 cents", () -> new NoteTally(60, "C4", 1, 1, 1, -1));
        refused("asked 1, reached 2", () -> new Tally(1, 2, 0, Optional.empty(), List.of()));
        refused("accuracy goes with them", () -> new Tally(1, 1, 0, Optional.empty(), List.of()));
        refused("asking by 'smell' (name, sound, both)", () -> Asking.parse("smell"));
    }

    private static void refused(String words, org.junit.jupiter.api.function.Executable maker) {
        String message =
                String.valueOf(org.junit.jupiter.api.Assertions.assertThrows(IllegalArgumentException.class, maker)
                        .getMessage());
        assertTrue(message.contains(words), message);
    }
}
