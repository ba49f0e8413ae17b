package handspan.outside.simulate;

/**
 * One note of a passage.
 *
 * @param placeMm true place of the pitch hand, 1..1500 mm
 * @param holdSeconds how long it is held once reached, 0.05..60 s
 */
public record PassageNote(double placeMm, double holdSeconds) {
    public PassageNote {
        Allowed.within("place of a note", placeMm, 1, SimulatedHand.AWAY_MM, "mm");
        Allowed.within("length of a note", holdSeconds, 0.05, 60, "s");
    }
}
