package handspan.bench;

import java.nio.charset.StandardCharsets;
import java.util.Random;

/**
 * What a board prints over a very long evening: a hand that comes and goes, light that is covered and drifts, garbage
 * on the wire, and now and then lines of another shape. Two numbers: mm and counts.
 */
final class SoakBoard {
    private static final int GARBAGE_ONE_IN = 50;
    private static final int LINES_OF_A_HAND = 1_000;
    private static final int LINES_AWAY = 300;
    private static final int LINES_OF_A_SONG = 10_000;
    private static final int LINES_BETWEEN_SONGS = 4_000;
    private static final double FAR_MM = 900;
    private static final int OTHER_SHAPE_EVERY = 100_000;
    private static final int OTHER_SHAPE_LINES = 2_000;

    private final Random random;
    private final StringBuilder text = new StringBuilder();

    /** Number of a line at which a song begins. */
    static final long SONG = LINES_BETWEEN_SONGS;

    SoakBoard(long seed) {
        this.random = new Random(seed);
    }

    /** The bytes of a line, with its end. */
    byte[] line(long number) {
        text.setLength(0);
        if (random.nextInt(GARBAGE_ONE_IN) == 0) {
            byte[] garbage = new byte[1 + random.nextInt(30)];
            random.nextBytes(garbage);
            garbage[garbage.length - 1] = '\n';
            return garbage;
        }
        boolean away = number % LINES_OF_A_SONG < LINES_BETWEEN_SONGS || number % LINES_OF_A_HAND < LINES_AWAY;
        // what stands beyond the zone is moved by 10 mm from song to song: there is something to hint at
        double mm = away
                ? FAR_MM + number / LINES_OF_A_SONG % 3 * 10
                : 300 + 120 * Math.sin(number * 0.01) + random.nextGaussian() * 2;
        double light = away ? 860 + number / 1e6 : 700 + 100 * Math.sin(number * 0.003);
        if (number % OTHER_SHAPE_EVERY >= OTHER_SHAPE_EVERY - OTHER_SHAPE_LINES) {
            text.append(number).append(',');
        }
        text.append(Math.round(mm)).append(',').append(Math.round(light)).append('\n');
        return text.toString().getBytes(StandardCharsets.US_ASCII);
    }
}
