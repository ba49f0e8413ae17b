package handspan.outside.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.number.units.Nanos;
import handspan.outside.simulate.SimulatedBoard.Channel;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

class SimulatedBoardTest {
    private static final SimulatedHand HAND = TimeOfFlightModelTest.stillAt(234);
    private static final long START = Nanos.ofSeconds(5);

    private static Channel ideal() {
        return new Channel(new TimeOfFlightModel(TimeOfFlightSettings.ideal(), 1), HAND);
    }

    private static Channel ranger() {
        TimeOfFlightSettings exact =
                TimeOfFlightSettings.usual(DistanceErrors.NONE).withNoise(0, 0, 0);
        return new Channel(new TimeOfFlightModel(exact, 1), HAND);
    }

    private static SimulatedBoard board(BoardSettings settings, Channel... channels) {
        return new SimulatedBoard(settings, List.of(channels), 1, START);
    }

    private static String line(SimulatedBoard board) {
        return new String(board.nextLine(), StandardCharsets.ISO_8859_1);
    }

    @Test
    void linesHaveTheirStyleAndADecimalPointInEveryLocale() {
        assertEquals("234,234\r\n", line(board(BoardSettings.ideal(50, LineStyle.plain(",")), ranger(), ranger())));
        assertEquals(
                "D:234.0 L:234\r\n",
                line(board(BoardSettings.ideal(50, LineStyle.labelled(" ", "D:", "L:")), ideal(), ranger())));
        assertEquals(
                "distance=234 light=234\r\n",
                line(board(
                        BoardSettings.ideal(50, LineStyle.labelled(" ", "distance=", "light=")), ranger(), ranger())));
        assertEquals(
                "Distance: 234.0 mm\r\n",
                line(board(BoardSettings.ideal(50, LineStyle.withUnit("Distance: ", " mm")), ideal())));
    }

    @Test
    void linesLeaveAtTheirRateWithinTheirJitterAndInOrder() {
        SimulatedBoard board = board(BoardSettings.usual(18, LineStyle.plain(",")), ranger());
        double periodMs = 1000 / 18.0;
        double firstMs = 5000 + 200;
        long last = START;
        double mostMs = 0;
        for (int i = 1; i <= 2000; i++) {
            long due = board.nextLineNanos();
            assertTrue(due > last);
            last = due;
            double early = Math.abs(Nanos.toMs(due) - firstMs - i * periodMs);
            mostMs = Math.max(mostMs, early);
            board.nextLine();
        }
        double jitterMs = 20 / 18.0;
        assertTrue(mostMs <= jitterMs + 1e-3, mostMs + " ms");
        assertTrue(mostMs > 0.9 * jitterMs, mostMs + " ms");
    }

    @Test
    void aBannerComesFirstThenThreeReadingsFortyMillimetresShort() {
        SimulatedBoard board =
                board(BoardSettings.usual(50, LineStyle.plain(",")).withBanner("ranger", "ready"), ranger());
        for (int round = 0; round < 2; round++) {
            assertEquals("ranger\r\n", line(board));
            assertEquals("ready\r\n", line(board));
            for (int i = 0; i < 3; i++) {
                assertEquals(234 - 40, Integer.parseInt(line(board).trim()), 4.5);
            }
            assertEquals("234\r\n", line(board));
            board.restart(board.nextLineNanos());
        }
    }

    @Test
    void aRestartIsSilentForTheTimeToBoot() {
        SimulatedBoard board = board(BoardSettings.ideal(50, LineStyle.plain(",")), ranger());
        board.nextLine();
        board.restart(Nanos.ofSeconds(60));
        assertEquals(60_220, Nanos.toMs(board.nextLineNanos()), 1e-6);
    }

    @Test
    void jitterThatWouldReorderLinesIsRefused() {
        LineStyle style = LineStyle.plain(",");
        assertThrows(IllegalArgumentException.class, () -> new BoardSettings(50, 10.1, style, List.of(), 200, 3, -40));
        assertThrows(
                IllegalArgumentException.class,
                () -> new SimulatedBoard(BoardSettings.usual(50, style), List.of(), 1, 0));
        assertFalse(board(BoardSettings.usual(50, style), ranger()).channels().isEmpty());
    }
}
