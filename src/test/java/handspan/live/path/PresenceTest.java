package handspan.live.path;

import static org.junit.jupiter.api.Assertions.assertEquals;

import handspan.number.units.Nanos;
import org.junit.jupiter.api.Test;

class PresenceTest {
    private static final long READING = 20 * Nanos.PER_MS;

    /** A zone of 100..500 mm with its margins, noise of 2 mm. */
    private static final PlayBounds REACH = new PlayBounds(60, 100, 500, 540, 2);

    private final Presence presence = new Presence(50, 60 * Nanos.PER_MS, REACH);
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
        Presence slow = new Presence(18, 60 * Nanos.PER_MS, REACH);
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
        Presence slow = new Presence(10, 0, REACH);
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

    private Presence.State nothing() {
        now += READING;
        return presence.onNothing(now);
    }

    private Presence.State outside(double mm) {
        now += READING;
        return presence.onOutside(mm, now);
    }

    /** A hand that plays at 300 mm and then goes outward with 30 mm a reading, 1.5 m/s, as far as it is told. */
    private Presence.State outwardTo(double endMm) {
        hand(300);
        Presence.State last = hand(300);
        for (double mm = 330; mm <= endMm; mm += 30) {
            last = hand(mm);
        }
        return last;
    }

    /** 700 mm/s is 14 mm a reading. */
    @Test
    void aHandThatComesFastIsHeardWhenItHasSlowed() {
        assertEquals(Presence.State.ARRIVING, hand(400));
        assertEquals(Presence.State.ARRIVING, hand(386));
        assertEquals(Presence.State.ARRIVING, hand(372));
        assertEquals(Presence.State.ARRIVING, hand(362));
        assertEquals(Presence.State.PLAYING, hand(360));
    }

    @Test
    void aHandThatStaysFastFor150MsPlays() {
        for (int i = 0; i < 8; i++) {
            assertEquals(Presence.State.ARRIVING, hand(500 - 14 * i), i + " readings");
        }
        assertEquals(Presence.State.PLAYING, hand(500 - 14 * 8));
    }

    /** From 510 mm at 1.5 m/s a hand that stops at 25 m/s^2 stops at 555 mm, beyond the 540 it may reach. */
    @Test
    void aHandTooFastToStopWithinReachLeavesAtOnce() {
        assertEquals(Presence.State.PLAYING, outwardTo(480));
        assertEquals(Presence.State.LEAVING, hand(510));
    }

    @Test
    void aFastHandSeenOutOfReachLeavesAtOnce() {
        outwardTo(480);
        assertEquals(Presence.State.LEAVING, outside(560));
    }

    @Test
    void somethingBehindAStillHandIsADropout() {
        outwardTo(300);
        outside(620);
        assertEquals(Presence.State.PLAYING, outside(620));
        assertEquals(Presence.State.PLAYING, hand(301));
    }

    @Test
    void threeReadingsOfNothingAfterAFastOneAreALeaving() {
        outwardTo(420);
        assertEquals(Presence.State.PLAYING, nothing());
        assertEquals(Presence.State.PLAYING, nothing());
        assertEquals(Presence.State.LEAVING, nothing());
    }

    @Test
    void threeReadingsOfNothingAfterAStillHandAreNot() {
        outwardTo(300);
        nothing();
        nothing();
        assertEquals(Presence.State.PLAYING, nothing());
    }

    /**
     * A sensor with 8 readings a second: too old a speed to tell from it that a hand can't stop, but it is past the
     * end.
     */
    @Test
    void nothingAfterAFastHandPastTheEndIsALeaving() {
        Presence slow = new Presence(8, 60 * Nanos.PER_MS, REACH);
        long reading = Nanos.PER_SECOND / 8;
        slow.onHand(300, now);
        slow.onHand(300, now + reading);
        slow.onHand(420, now + 2 * reading);
        assertEquals(Presence.State.PLAYING, slow.onHand(530, now + 3 * reading));
        assertEquals(Presence.State.LEAVING, slow.onNothing(now + 4 * reading));
    }

    /** 300, then 430 held back as no place for this hand yet, then what is behind it. */
    @Test
    void aHalfWayReadingThenTheBackgroundIsALeaving() {
        outwardTo(300);
        now += READING;
        assertEquals(Presence.State.PLAYING, presence.onLeap(430, now));
        assertEquals(Presence.State.LEAVING, outside(620));
    }

    @Test
    void aSlowHandPlaysTheEndUntilItHasBeenOutOfReachForAWhile() {
        hand(530);
        hand(532);
        for (int i = 0; i < 9; i++) {
            assertEquals(Presence.State.PLAYING, outside(541 + 2 * i), i + " readings");
        }
        assertEquals(Presence.State.LEAVING, outside(560));
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
