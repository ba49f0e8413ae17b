package handspan.room;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * A few seconds with the hand held still, and what they were worth.
 *
 * @param kind what was asked for
 * @param hand which hand
 * @param physical robust value in the sensor's physical unit (mm for lengths)
 * @param standardUncertainty of it, same unit
 * @param noise fast part of the scatter of single readings, same unit
 * @param count readings that were kept
 * @param mm true distance by ruler, where the step had one
 * @param key key number of the note that was asked for, where the step had one
 * @param peak highest steady reading on the way here from the hold before, in the sensor's physical unit, where it was
 *     watched: shows that a sensor folded over on the way
 * @param step in which the sensor counts, physical unit; 0 where none was seen
 * @param target what kind of hold was reached for, where it was a reach; its distance or note is that of the place
 */
public record Hold(
        StepKind kind,
        HandRole hand,
        double physical,
        double standardUncertainty,
        double noise,
        int count,
        OptionalDouble mm,
        OptionalInt key,
        OptionalDouble peak,
        double step,
        Optional<StepKind> target) {
    /** Checks that the figures are numbers. */
    public Hold {
        if (!Double.isFinite(physical)
                || !Double.isFinite(standardUncertainty)
                || !Double.isFinite(noise)
                || !(standardUncertainty >= 0 && noise >= 0)
                || count < 0) {
            throw new IllegalArgumentException("hold " + kind.word() + ": value " + physical + ", uncertainty "
                    + standardUncertainty + ", noise " + noise + ", count " + count
                    + " (finite; all but the value 0 or more)");
        }
        if (mm.isPresent() && !(mm.getAsDouble() >= 0 && mm.getAsDouble() <= 5000)) {
            throw new IllegalArgumentException(
                    "hold " + kind.word() + ": " + mm.getAsDouble() + " mm by ruler (0..5000)");
        }
        if (!(step >= 0) || !Double.isFinite(step)) {
            throw new IllegalArgumentException("hold " + kind.word() + ": step " + step + " (0 or more)");
        }
        if (peak.isPresent() && !Double.isFinite(peak.getAsDouble())) {
            throw new IllegalArgumentException("hold " + kind.word() + ": peak " + peak.getAsDouble() + " (a number)");
        }
        if (key.isPresent() && (key.getAsInt() < 0 || key.getAsInt() > 127)) {
            throw new IllegalArgumentException("hold " + kind.word() + ": key " + key.getAsInt() + " (0..127)");
        }
    }

    /** A hold without ruler and note. */
    public static Hold of(
            StepKind kind, HandRole hand, double physical, double standardUncertainty, double noise, int count) {
        return new Hold(
                kind,
                hand,
                physical,
                standardUncertainty,
                noise,
                count,
                OptionalDouble.empty(),
                OptionalInt.empty(),
                OptionalDouble.empty(),
                0,
                Optional.empty());
    }

    /** The same hold at a distance by ruler. */
    public Hold at(double rulerMm) {
        return new Hold(
                kind,
                hand,
                physical,
                standardUncertainty,
                noise,
                count,
                OptionalDouble.of(rulerMm),
                key,
                peak,
                step,
                target);
    }

    /** The same hold where a note shall be. */
    public Hold on(int noteKey) {
        return new Hold(
                kind,
                hand,
                physical,
                standardUncertainty,
                noise,
                count,
                mm,
                OptionalInt.of(noteKey),
                peak,
                step,
                target);
    }

    /** The same hold, asked for at a place by a ruler or for a note, as far as the step had one. */
    public Hold asked(OptionalDouble rulerMm, OptionalInt noteKey) {
        return new Hold(kind, hand, physical, standardUncertainty, noise, count, rulerMm, noteKey, peak, step, target);
    }

    /** The same hold, with the highest reading on the way to it. */
    public Hold after(double peakOnTheWay) {
        return new Hold(
                kind,
                hand,
                physical,
                standardUncertainty,
                noise,
                count,
                mm,
                key,
                OptionalDouble.of(peakOnTheWay),
                step,
                target);
    }

    /** The same hold, by a sensor that counts in steps. */
    public Hold inSteps(double sensorStep) {
        return new Hold(kind, hand, physical, standardUncertainty, noise, count, mm, key, peak, sensorStep, target);
    }

    /** The same hold, as a reach for a place that was held before. */
    public Hold reaching(StepKind place) {
        return new Hold(
                kind, hand, physical, standardUncertainty, noise, count, mm, key, peak, step, Optional.of(place));
    }
}
