package handspan.room.calibrate;

import handspan.instrument.sensor.InfraredPart;
import handspan.number.units.Figures;
import handspan.room.Hold;
import java.util.List;
import java.util.Optional;

/**
 * Looks for the fold-over of an infrared sensor inside a zone. Nearer than it the output falls again, so that one
 * voltage means two distances: such a zone is refused. Two signs give it away: a ruler distance nearer than the part's
 * fold-over, and an output that rose above the nearer hold's on the way to the farther one.
 */
final class Folds {
    /** On the way outward a reading may rise above the near hold by this share and still be noise. */
    private static final double RISE01 = 0.05;

    /** And by this many times the noise. */
    private static final double NOISE_TIMES = 5;

    private Folds() {}

    /**
     * Why these holds can't be played.
     *
     * @param holds of the hand, from near to far
     * @return empty when the zone keeps clear of the fold
     */
    static Optional<String> between(InfraredPart part, List<Hold> holds) {
        Hold near = holds.get(0);
        String fold = "the sensor's fold-over at about " + HandFit.mm(part.foldMm());
        if (near.mm().isPresent() && near.mm().getAsDouble() < part.foldMm()) {
            return Optional.of("the hold at " + HandFit.mm(near.mm().getAsDouble()) + " is nearer than " + fold
                    + ", where one reading means two distances: begin the zone at "
                    + HandFit.mm(part.lawFromMm()) + " or beyond, or set the sensor back");
        }
        for (int i = 1; i < holds.size(); i++) {
            Hold before = holds.get(i - 1);
            Hold hold = holds.get(i);
            double most = before.physical() * (1 + RISE01) + NOISE_TIMES * before.noise();
            if (hold.peak().isPresent() && hold.peak().getAsDouble() > most) {
                return Optional.of("on the way from the hold that reads " + volts(before) + " to the one that reads "
                        + volts(hold) + " the output rose to "
                        + Figures.text(hold.peak().getAsDouble(), 2)
                        + " V: the zone reaches " + fold + "; begin it at " + HandFit.mm(part.lawFromMm())
                        + " or beyond, or set the sensor back");
            }
        }
        return Optional.empty();
    }

    static String volts(Hold hold) {
        return Figures.text(hold.physical(), 2) + " V";
    }
}
