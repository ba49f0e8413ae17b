package handspan.hand.trial;

/** What turns readings into where the hand is said to be. */
@FunctionalInterface
public interface Follower {
    /**
     * Takes a reading.
     *
     * @param mm as read
     * @param intervalS since the last one, s
     * @return where the hand is said to be, mm
     */
    double next(double mm, double intervalS);
}
