package handspan.live.path;

import static org.junit.jupiter.api.Assertions.assertEquals;

import handspan.number.units.Nanos;
import org.junit.jupiter.api.Test;

class PresenceTest {
    private static final long READING = 20 * Nanos.PER_MS;

    private final Presence presence = new Presence(50, 60 * Nanos.PER_MS);
    private long now = Nanos.PER_SECOND;

    private Presence.State hand(double mm) {
        now += READING;
        return presence.onHand(mm, now);
    }

    private Presence.State after(long nanos) {
        return presence.onTick(now + nanos);
    }

    @Test
    void twoAgreeingReadingsMakeAHandPlay() {
        assertEquals(Presence.State.ARRIVING, hand(300));
        assertEquals(Presence.State.PLAYING, hand(305));
    }

    /** Echo board at 18 a second, readings 620, 493, 119 mm: the half-way ghost of a real capture. */
    @Test
    void aHalfWayGhostDoesNotPlay() {
        Presence slow = new Presence(18, 60 * Nanos.PER_MS);
        long reading = Nanos.PER_SECOND / 18;
        assertEquals(Presence.State.ARRIVING, slow.onHand(620, now));
        assertEquals(Presence.State.ARRIVING, slow.onHand(493, now + reading));
        assertEquals(Presence.State.ARRIVING, slow.onHand(119, now + 2 * reading));
        assertEquals(Presence.State.PLAYING, slow.onHand(121, now + 3 * reading));
    }

    @Test
    void aDropoutOfTwoReadingsIsNotALeaving() {
        hand(300);
        hand(300);
        assertEquals(Presence.State.PLAYING, after(3 * READING));
        assertEquals(Presence.State.PLAYING, hand(301));
    }

    /** 180 ms at 50 a second, where 3.5 readings would be 70 ms. */
    @Test
    void aHandLeavesAfter180MsAndIsAwayAfterTheFade() {
        hand(300);
        hand(300);
        assertEquals(Presence.State.PLAYING, after(Nanos.ofMs(180)));
        assertEquals(Presence.State.LEAVING, after(Nanos.ofMs(180) + 1));
        assertEquals(Presence.State.LEAVING, after(Nanos.ofMs(239)));
        assertEquals(Presence.State.AWAY, after(Nanos.ofMs(240) + 2));
    }

    /** 3.5 readings at 10 a second are 350 ms. */
    @Test
    void aSlowSensorIsGivenThreeAndAHalfReadings() {
        Presence slow = new Presence(10, 0);
        slow.onHand(300, now);
        slow.onHand(300, now + Nanos.ofMs(100));
        assertEquals(Presence.State.PLAYING, slow.onTick(now + Nanos.ofMs(450)));
        assertEquals(Presence.State.LEAVING, slow.onTick(now + Nanos.ofMs(451)));
    }

    @Test
    void aHandThatComesBackWhileLeavingHasToBeConfirmedAgain() {
        hand(300);
        hand(300);
        after(Nanos.ofMs(181));
        now += Nanos.ofMs(190);
        assertEquals(Presence.State.ARRIVING, hand(310));
        assertEquals(Presence.State.PLAYING, hand(311));
    }

    @Test
    void aSingleReadingGoesAwayAgain() {
        hand(300);
        assertEquals(Presence.State.AWAY, after(Nanos.ofMs(181)));
    }

    @Test
    void aLossIsAwayAtOnce() {
        hand(300);
        hand(300);
        presence.onLost();
        assertEquals(Presence.State.AWAY, presence.state());
    }

    @Test
    void theDeadlineIsWhenAChangeCanComeWithoutAReading() {
        assertEquals(Long.MAX_VALUE, presence.nextDeadlineNanos());
        hand(300);
        hand(300);
        assertEquals(now + Nanos.ofMs(180) + 1, presence.nextDeadlineNanos());
        long left = now + Nanos.ofMs(181);
        presence.onTick(left);
        assertEquals(left + Nanos.ofMs(60), presence.nextDeadlineNanos());
    }
}
