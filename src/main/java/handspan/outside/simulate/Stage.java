package handspan.outside.simulate;

/**
 * Where a player's places for one hand truly are, in mm above the sensor. The open place has no distance: the hand is
 * gone.
 *
 * @param nearMm near end
 * @param farMm far end, beyond the near end
 * @param midMm middle place
 * @param coveredMm place at which the hand covers the sensor
 */
public record Stage(double nearMm, double farMm, double midMm, double coveredMm) {
    /** A pitch hand between 100 and 500 mm. */
    public static final Stage PITCH = new Stage(100, 500, 300, 8);

    /** A pitch hand over an infrared part, beyond its fold-over. */
    public static final Stage PITCH_BY_INFRARED = new Stage(100, 400, 220, 8);

    /** A pitch hand over an infrared part, the near place within its fold-over at 60 mm. */
    public static final Stage PITCH_IN_THE_FOLD = new Stage(40, 300, 150, 8);

    /** A pitch hand over a light cell. */
    public static final Stage PITCH_BY_LIGHT = new Stage(30, 180, 80, 8);

    /** A level hand over a light cell. */
    public static final Stage LEVEL_BY_LIGHT = new Stage(20, 250, 50, 8);

    /** A level hand over a second distance sensor. */
    public static final Stage LEVEL_BY_DISTANCE = new Stage(80, 400, 240, 8);

    public Stage {
        Allowed.within("near place", nearMm, 1, SimulatedHand.AWAY_MM, "mm");
        Allowed.within("far place", farMm, nearMm + 1, SimulatedHand.AWAY_MM, "mm");
        Allowed.within("middle place", midMm, 1, SimulatedHand.AWAY_MM, "mm");
        Allowed.within("covering place", coveredMm, 1, SimulatedHand.AWAY_MM, "mm");
    }
}
