package handspan.outside.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.number.units.Nanos;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SimulatedPlayerTest {
    private static final double MM = 1e-6;

    private static long s(double seconds) {
        return Nanos.ofSeconds(seconds);
    }

    private static SimulatedPlayer player(long seed) {
        return new SimulatedPlayer(
                Stage.PITCH, Stage.LEVEL_BY_LIGHT, HandSettings.USUAL, SimulatedPlayer.USUAL_AIM_MM, seed);
    }

    @ParameterizedTest
    @CsvSource({
        "NEAR, PITCH, 0, 100",
        "FAR, PITCH, 0, 500",
        "MID, PITCH, 0, 300",
        "RULER, PITCH, 250, 250",
        "PLACE, LEVEL, 120, 120",
        "NEAR, LEVEL, 0, 20",
        "FAR, LEVEL, 0, 250",
        "MID, LEVEL, 0, 50",
        "COVERED, LEVEL, 0, 8"
    })
    void aCueLeadsTheRightHandToItsPlace(Cue.Kind kind, PlayerHand hand, double mm, double placeMm) {
        SimulatedPlayer player = player(1);
        long arrived = player.react(new Cue(kind, hand, mm), s(10));
        assertEquals(placeMm, player.hand(hand).intendedMm(arrived), MM);
        assertEquals(placeMm, player.hand(hand).intendedMm(arrived + s(60)), MM);
        PlayerHand other = hand == PlayerHand.PITCH ? PlayerHand.LEVEL : PlayerHand.PITCH;
        assertFalse(player.hand(other).presentAt(arrived));
    }

    @Test
    void aPlayerReactsInHumanTime() {
        for (long seed = 0; seed < 200; seed++) {
            SimulatedPlayer player = player(seed);
            player.react(Cue.of(Cue.Kind.NEAR, PlayerHand.PITCH), 0);
            long arrived = player.react(Cue.of(Cue.Kind.FAR, PlayerHand.PITCH), s(5));
            SimulatedHand hand = player.hand(PlayerHand.PITCH);
            assertEquals(100, hand.intendedMm(s(5.25)), MM, "no faster than 0.25 s");
            assertTrue(hand.intendedMm(s(5.46)) > 100, "no slower than 0.45 s");
            assertTrue(arrived >= s(5.85) && arrived <= s(6.45));
        }
    }

    @Test
    void restAndOpenTakeTheHandAway() {
        for (Cue.Kind kind : List.of(Cue.Kind.REST, Cue.Kind.OPEN)) {
            SimulatedPlayer player = player(3);
            player.react(Cue.of(Cue.Kind.COVERED, PlayerHand.LEVEL), 0);
            long gone = player.react(Cue.of(kind, PlayerHand.LEVEL), s(5));
            assertTrue(player.hand(PlayerHand.LEVEL).presentAt(s(5.2)));
            assertFalse(player.hand(PlayerHand.LEVEL).presentAt(gone));
        }
    }

    @Test
    void anUnaidedReachMissesByTheAim() {
        SimulatedPlayer player = player(4);
        double[] missMm = new double[2000];
        for (int i = 0; i < missMm.length; i++) {
            long arrived = player.react(Cue.at(Cue.Kind.REACH, PlayerHand.PITCH, 300), s(3.0 * i));
            missMm[i] = player.hand(PlayerHand.PITCH).intendedMm(arrived) - 300;
        }
        // four standard errors of an rms of 2000 values: 5/sqrt(4000) * 4
        assertEquals(5, Series.rms(missMm), 0.32);
    }

    @Test
    void aPlayerCanBeMadeToReachBetter() {
        SimulatedPlayer player = player(4);
        player.aimWithin(2);
        double[] missMm = new double[2000];
        for (int i = 0; i < missMm.length; i++) {
            long arrived = player.react(Cue.at(Cue.Kind.REACH, PlayerHand.PITCH, 300), s(3.0 * i));
            missMm[i] = player.hand(PlayerHand.PITCH).intendedMm(arrived) - 300;
        }
        // four standard errors of an rms of 2000 values: 2/sqrt(4000) * 4
        assertEquals(2, Series.rms(missMm), 0.13);
        assertThrows(IllegalArgumentException.class, () -> player.aimWithin(-1));
    }

    @Test
    void aPassageVisitsItsNotesAndTheLevelBreathes() {
        SimulatedPlayer player = player(5);
        List<PassageNote> notes = player.improvise(40);
        long end = player.playPassage(notes, s(2));
        SimulatedHand pitch = player.hand(PlayerHand.PITCH);
        SimulatedHand level = player.hand(PlayerHand.LEVEL);
        int reached = 0;
        double mostLevel = 0;
        double leastLevel = SimulatedHand.AWAY_MM;
        for (long t = s(2); t < end; t += s(0.01)) {
            if (reached < notes.size()
                    && Math.abs(pitch.intendedMm(t) - notes.get(reached).placeMm()) < 0.5) {
                reached++;
            }
            if (t > s(4)) {
                mostLevel = Math.max(mostLevel, level.intendedMm(t));
                leastLevel = Math.min(leastLevel, level.intendedMm(t));
            }
        }
        assertEquals(notes.size(), reached);
        assertEquals(notes.get(39).placeMm(), pitch.intendedMm(end), MM);
        assertEquals(250, mostLevel, 1);
        assertEquals(20, leastLevel, 1);
        double held = notes.stream().mapToDouble(PassageNote::holdSeconds).sum();
        assertTrue(Nanos.toSeconds(end) - 2 > held);
    }

    @Test
    void aLongNoteHasALittleVibratoWithinTheRatesThatPlayersUse() {
        SimulatedPlayer player = player(6);
        player.playPassage(List.of(new PassageNote(300, 5)), 0);
        double[] mm = new double[350];
        for (int i = 0; i < mm.length; i++) {
            mm[i] = player.hand(PlayerHand.PITCH).intendedMm(s(1.5 + i * 0.01)) - 300;
        }
        // 5.5..8 Hz: R. Timmers, P. Desain, ICMPC 2000
        double hz = Series.meanHz(mm, 100);
        assertTrue(hz > 5.3 && hz < 8, hz + " Hz");
        double amplitude = Series.rms(mm) * Math.sqrt(2);
        assertTrue(amplitude > 0.9 && amplitude < 3.1, amplitude + " mm");
    }

    @Test
    void aDistanceIsAskedForExactlyWhereTheCueHasOne() {
        assertThrows(IllegalArgumentException.class, () -> Cue.of(Cue.Kind.RULER, PlayerHand.PITCH));
        assertThrows(IllegalArgumentException.class, () -> Cue.at(Cue.Kind.NEAR, PlayerHand.PITCH, 100));
    }
}
