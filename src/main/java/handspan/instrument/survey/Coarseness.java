package handspan.instrument.survey;

import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.SensorKind;
import handspan.instrument.sensor.Unit;
import handspan.number.units.Figures;
import java.util.Arrays;
import java.util.Optional;

/**
 * A length printed in steps so large that a player hears them: whole centimetres, whole inches, or millimetres by the
 * ten. The error of rounding is {@code step / sqrt(12)} rms (uniform distribution; JCGM 100:2008, 4.3.7).
 *
 * @param step in the channel's unit
 * @param words for the step, plural
 * @param cents rms, at two octaves in 400 mm
 * @param isEcho whether microseconds could be printed instead
 */
public record Coarseness(double step, String words, double cents, boolean isEcho) {
    private static final int LEAST = 10;

    static Optional<Coarseness> in(double[] readings, ChannelSpec spec, Measure measure) {
        double step = spec.unit() == Unit.MM ? 10 : 1;
        boolean may = spec.unit() == Unit.MM || spec.unit() == Unit.CM || spec.unit() == Unit.IN;
        boolean whole = may
                && readings.length >= LEAST
                && Arrays.stream(readings).allMatch(v -> v % step == 0)
                // one number alone may be a multiple of ten by chance
                && (spec.unit() != Unit.MM || Arrays.stream(readings).distinct().count() > 1);
        if (!whole) {
            return Optional.empty();
        }
        String words = spec.unit() == Unit.IN ? "whole inches" : "whole centimetres";
        return Optional.of(new Coarseness(
                step,
                words,
                Measure.CENTS_PER_MM * measure.size(step) / Math.sqrt(12),
                spec.kind() == SensorKind.ECHO));
    }

    Complaint complaint() {
        return new Complaint(
                Verdict.USABLE,
                words + " cost about " + Figures.text(cents, 0) + " cents rms at "
                        + Figures.text(Measure.CENTS_PER_MM, 0) + " cents/mm",
                isEcho
                        ? "let the board print the echo's microseconds"
                        : "let the board print millimetres, or the microseconds of an echo");
    }
}
