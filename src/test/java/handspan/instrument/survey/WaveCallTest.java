package handspan.instrument.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.instrument.line.Reading;
import handspan.instrument.survey.WaveCall.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Three boards of invented readings, 50 a second, in mm; a hand waves between 150 and 350 mm 0.7 times a second. */
class WaveCallTest {
    private static final double RATE = 50;
    private static final double NONE = 8190;

    private final Random random = new Random(11);

    /** What a board prints at a moment. */
    private interface Board {
        double mm(double seconds);
    }

    private static Reading reading(double seconds, double mm) {
        return new Reading(Math.round(seconds * 1e9), new double[] {mm}, 1);
    }

    private static List<Reading> run(Board board, double fromSeconds, double toSeconds) {
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; fromSeconds + i / RATE < toSeconds; i++) {
            double seconds = fromSeconds + i / RATE;
            readings.add(reading(seconds, board.mm(seconds)));
        }
        return readings;
    }

    private static double wave(double seconds) {
        return Math.rint(250 + 100 * Math.sin(2 * Math.PI * 0.7 * seconds));
    }

    private static Board waving(double from, double to, Board otherwise) {
        return seconds -> seconds >= from && seconds < to ? wave(seconds) : otherwise.mm(seconds);
    }

    private Board noisy(double mm, double deviationMm) {
        return seconds -> Math.rint(mm + deviationMm * random.nextGaussian());
    }

    /** The first verdict that is none, or nobody at the end. */
    private static Verdict called(List<Board> boards, List<Integer> slots, double seconds) {
        List<List<Reading>> rests =
                boards.stream().map(board -> run(board, 0, 3)).toList();
        WaveCall call = new WaveCall(rests, slots);
        for (int i = 0; i < seconds * RATE; i++) {
            for (int board = 0; board < boards.size(); board++) {
                double now = 3 + i / RATE;
                call.onReading(board, reading(now, boards.get(board).mm(now)));
            }
            if (!(call.verdict() instanceof Verdict.Nobody)) {
                return call.verdict();
            }
        }
        return call.verdict();
    }

    private static final Board EMPTY = seconds -> NONE;
    private static final List<Integer> ALL = List.of(0, 0, 0);

    @Test
    void theBoardWhoseHandWavesIsTheOne() {
        assertEquals(new Verdict.One(1), called(List.of(EMPTY, waving(4, 9, EMPTY), EMPTY), ALL, 10));
    }

    @Test
    void aPlayerWhoTakesTimeToBeginIsFoundAsSoon() {
        assertEquals(new Verdict.One(2), called(List.of(EMPTY, EMPTY, waving(18, 22, EMPTY)), ALL, 19));
    }

    @Test
    void twoWhoWaveAtOnceAreNotToldApart() {
        assertEquals(
                new Verdict.Several(List.of(0, 1)),
                called(List.of(waving(4, 9, EMPTY), waving(4.1, 9, EMPTY), EMPTY), ALL, 10));
    }

    @Test
    void aHandThatOnlyPassesByAnotherBoardIsEnoughToAskAgain() {
        // seen for 0.6 s of the four that count
        assertEquals(
                new Verdict.Several(List.of(0, 2)),
                called(List.of(waving(4, 9, EMPTY), EMPTY, waving(4, 4.6, EMPTY)), ALL, 10));
    }

    @Test
    void aNoisySensorOverATableDoesNotWaveByItself() {
        // the noise of a poor ranger, 6 mm rms, and one twice as bad
        assertEquals(new Verdict.Nobody(), called(List.of(noisy(700, 6), noisy(400, 12), noisy(620, 6)), ALL, 20));
    }

    @Test
    void aHandOverANoisySensorIsSeenAllTheSame() {
        assertEquals(
                new Verdict.One(0),
                called(List.of(waving(5, 10, noisy(700, 6)), noisy(400, 12), noisy(620, 6)), ALL, 8));
    }

    @Test
    void strayEchoesAtRestAreNoWave() {
        Board strays = seconds -> random.nextDouble() < 0.04 ? 200 + 200 * random.nextDouble() : NONE;
        assertEquals(new Verdict.One(1), called(List.of(strays, waving(6, 10, EMPTY), EMPTY), ALL, 8));
    }

    @Test
    void aBoardThatDoesNotFitTheRoomOrIsTakenIsNotLookedAt() {
        assertEquals(
                new Verdict.One(0),
                called(List.of(waving(5, 9, EMPTY), waving(4, 9, EMPTY), EMPTY), List.of(0, -1, 0), 10));
    }

    @Test
    void aBoardWhoseRestIsNotKnownIsNotJudged() {
        WaveCall call = new WaveCall(List.of(List.of(reading(0, NONE)), List.of()), List.of(0, 0));
        assertFalse(call.isPossible());
        run(seconds -> wave(seconds), 1, 4).forEach(reading -> call.onReading(0, reading));
        assertEquals(new Verdict.Nobody(), call.verdict());
        assertTrue(new WaveCall(List.of(run(EMPTY, 0, 3)), List.of(0)).isPossible());
    }
}
