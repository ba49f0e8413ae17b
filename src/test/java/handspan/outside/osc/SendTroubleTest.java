package handspan.outside.osc;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class SendTroubleTest {
    private static final long MS = 1_000_000;

    private final SendTrouble trouble = new SendTrouble();

    /** Measured on Linux: with nobody listening the sends of a connected socket succeed and fail by turns. */
    @Test
    void successesByTurnsWithFailuresAreNoEndOfTrouble() {
        for (long i = 0; i < 10_000; i += 2) {
            trouble.onFailure(i * 4_000 * MS, "nobody");
            trouble.onSuccess((i + 1) * 4_000 * MS);
        }
        assertEquals("nobody", trouble.words());
    }

    /** Linux answers refused datagrams from afar about once a second: manual page icmp(7). */
    @Test
    void aRefusalASecondIsTroubleAtAnyRate() {
        for (long i = 0; i <= 10_000; i++) {
            if (i % 1_000 == 0) {
                trouble.onFailure(i * MS, "nobody");
            } else {
                trouble.onSuccess(i * MS);
            }
            assertEquals("nobody", trouble.words());
        }
    }

    @Test
    void troubleIsOverWhenBothTheSendsAndTheSecondsHavePassed() {
        trouble.onFailure(0, "nobody");
        for (long i = 1; i <= 99; i++) {
            trouble.onSuccess(i * 100 * MS);
        }
        assertEquals("nobody", trouble.words(), "99 sends in 9.9 s");
        trouble.onSuccess(10_000 * MS);
        assertEquals("", trouble.words(), "100 sends in 10 s");

        trouble.onFailure(20_000 * MS, "nobody");
        for (long i = 1; i <= 2_999; i++) {
            trouble.onSuccess((20_000 + i) * MS);
        }
        assertEquals("nobody", trouble.words(), "2,999 sends in 2.999 s");
        trouble.onSuccess(23_000 * MS);
        assertEquals("", trouble.words(), "3,000 sends in 3 s");
    }

    @Test
    void theLatestTroubleIsTold() {
        trouble.onFailure(0, "nobody");
        trouble.onFailure(1, "no network");
        assertEquals("no network", trouble.words());
        trouble.forget();
        assertEquals("", trouble.words());
    }
}
