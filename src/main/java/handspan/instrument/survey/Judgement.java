package handspan.instrument.survey;

import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.Photoresistor;
import handspan.instrument.sensor.Sensor;
import handspan.number.fit.Noise;
import handspan.number.units.Figures;
import java.util.ArrayList;
import java.util.List;

/**
 * Turns a channel's figures into a verdict. The limits are this project's own: 3 mm of noise is 18 cents at two octaves
 * in 40 cm and can be smoothed to 5 cents within 60 ms at 50 readings a second; 8 mm can't be smoothed to 21 cents.
 */
final class Judgement {
    private static final double GOOD_MM = 3;
    private static final double USABLE_MM = 8;
    private static final double GOOD_COUNTS = 4;
    private static final double USABLE_COUNTS = 12;
    private static final double GOOD_DROPOUTS01 = 0.05;
    private static final double USABLE_DROPOUTS01 = 0.15;
    private static final double SLOW_PER_S = 30;

    private Judgement() {}

    static ChannelReport nothingHeld(ChannelSpec spec, int count, double ratePerS) {
        return new ChannelReport(
                spec.channel(),
                spec,
                count,
                0,
                0,
                0,
                Double.NaN,
                0,
                ratePerS,
                1,
                0,
                0,
                Verdict.POOR,
                "no hand was held still over this sensor for a second",
                "hold the hand still over the sensor and survey again; if it was, look at cable and sensor");
    }

    static ChannelReport of(
            ChannelSpec spec,
            Sensor sensor,
            int count,
            int heldCount,
            Noise noise,
            double mmPerUnit,
            double ratePerS,
            double dropouts01,
            double repeats01) {
        List<String> reasons = new ArrayList<>();
        List<String> remedies = new ArrayList<>();
        Verdict verdict = Verdict.GOOD;
        boolean length = sensor.isLength();
        double size = length ? noise.deviation() * mmPerUnit : noise.deviation();
        String unit = length ? "mm" : spec.unit().word();
        reasons.add("noise " + Figures.text(size, 2) + " " + unit);
        if (size > (length ? GOOD_MM : GOOD_COUNTS)) {
            boolean usable = size <= (length ? USABLE_MM : USABLE_COUNTS);
            verdict = worse(verdict, usable ? Verdict.USABLE : Verdict.POOR);
            remedies.add(
                    length ? "play nearer to the sensor, palm flat" : "average over whole mains cycles on the board");
        }
        if (dropouts01 > 0) {
            reasons.add(Figures.percent(dropouts01) + " of readings missing");
        }
        if (dropouts01 > GOOD_DROPOUTS01) {
            verdict = worse(verdict, dropouts01 <= USABLE_DROPOUTS01 ? Verdict.USABLE : Verdict.POOR);
            remedies.add("roll the sleeve up, palm flat");
        }
        if (ratePerS > 0 && ratePerS < SLOW_PER_S) {
            verdict = worse(verdict, Verdict.USABLE);
            reasons.add(Figures.text(ratePerS, 1) + " readings a second: vibrato will be lost");
        }
        if (sensor instanceof Photoresistor light && light.isClipped(noise.median())) {
            verdict = Verdict.POOR;
            reasons.add("reads " + Figures.text(noise.median(), 0) + ", an end of its scale");
            remedies.add("change the fixed resistor of the divider");
        }
        return new ChannelReport(
                spec.channel(),
                spec,
                count,
                heldCount,
                noise.median(),
                noise.deviation(),
                length ? size : Double.NaN,
                noise.step(),
                ratePerS,
                dropouts01,
                repeats01,
                noise.rejected(),
                verdict,
                String.join("; ", reasons),
                String.join("; ", remedies));
    }

    private static Verdict worse(Verdict a, Verdict b) {
        return a.compareTo(b) >= 0 ? a : b;
    }
}
