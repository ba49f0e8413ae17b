package handspan.instrument.survey;

import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.Photoresistor;
import handspan.instrument.sensor.Sensor;
import handspan.instrument.sensor.SensorKind;
import handspan.number.units.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Turns findings into a verdict: the worst thing said decides. The limits are this project's own: 3 mm of noise is 18
 * cents at two octaves in 40 cm and can be smoothed to 5 cents within 60 ms at 50 readings a second; 8 mm can't be
 * smoothed to 21 cents.
 */
final class Judgement {
    private static final double GOOD_MM = 3;
    private static final double USABLE_MM = 8;
    private static final double GOOD_COUNTS = 4;
    private static final double USABLE_COUNTS = 12;
    private static final double REST01 = 0.98;

    private Judgement() {}

    static ChannelReport of(ChannelSpec spec, Sensor sensor, Findings findings) {
        Measure measure = Measure.of(spec, sensor);
        List<Complaint> all =
                findings.heldCount() == 0 ? List.of(noHand(findings)) : complaints(spec, sensor, findings, measure);
        Verdict verdict =
                all.stream().map(Complaint::verdict).max(Verdict::compareTo).orElse(Verdict.GOOD);
        return new ChannelReport(spec, findings, verdict, joined(all, true), joined(all, false));
    }

    private static List<Complaint> complaints(ChannelSpec spec, Sensor sensor, Findings findings, Measure measure) {
        double ratePerS = findings.pace().ratePerS();
        boolean isEcho = spec.kind() == SensorKind.ECHO;
        List<Complaint> all = new ArrayList<>();
        all.add(noise(findings, measure));
        findings.beating().ifPresent(beating -> all.add(beating.complaint(measure, isEcho)));
        findings.wobble().flatMap(wobble -> wobble.complaint(measure)).ifPresent(all::add);
        findings.coarseness().ifPresent(coarseness -> all.add(coarseness.complaint()));
        findings.dropouts().complaint(ratePerS).ifPresent(all::add);
        findings.clutter().flatMap(clutter -> clutter.complaint(measure)).ifPresent(all::add);
        findings.drift().flatMap(drift -> drift.complaint(measure)).ifPresent(all::add);
        findings.repeats().remark(ratePerS).ifPresent(all::add);
        Pace.slow(findings.repeats().newPerS(ratePerS)).ifPresent(all::add);
        findings.pace().bursts().ifPresent(all::add);
        findings.sentinels().remark().ifPresent(all::add);
        clipped(sensor, findings.noise().median()).ifPresent(all::add);
        return all;
    }

    private static Complaint noise(Findings findings, Measure measure) {
        double deviation = findings.noise().deviation();
        String reason = "noise " + measure.words(deviation);
        // what swings, toggles or is rounded has a remedy of its own
        boolean named = findings.beating().isPresent()
                || findings.wobble()
                        .filter(wobble -> wobble.explains(deviation))
                        .isPresent();
        if (named || deviation <= measure.inUnit(GOOD_MM, GOOD_COUNTS)) {
            return Complaint.remark(reason);
        }
        return new Complaint(
                deviation <= measure.inUnit(USABLE_MM, USABLE_COUNTS) ? Verdict.USABLE : Verdict.POOR,
                reason,
                measure.isLength()
                        ? "play nearer to the sensor, palm flat"
                        : "average over whole mains cycles on the board");
    }

    private static Optional<Complaint> clipped(Sensor sensor, double median) {
        return sensor instanceof Photoresistor light && light.isClipped(median)
                ? Optional.of(new Complaint(
                        Verdict.POOR,
                        "reads " + Figures.text(median, 0) + ", an end of its scale",
                        "change the fixed resistor of the divider"))
                : Optional.empty();
    }

    /**
     * A rest of nothing but sentinels is what a healthy sensor prints, or one that is dead: there is no telling yet.
     */
    private static Complaint noHand(Findings findings) {
        Sentinels sentinels = findings.sentinels();
        boolean rest = sentinels.share01() > REST01;
        String seen =
                sentinels.values().isEmpty() ? "numbers that mean no reading" : sentinels.words() + " (no reading)";
        return new Complaint(
                rest ? Verdict.USABLE : Verdict.POOR,
                "no hand was held still over this sensor"
                        + (rest ? ": nothing but " + seen + ", as a healthy rest is" : " for a second"),
                "hold the hand still over the sensor and survey again; if it was, look at cable and sensor");
    }

    private static String joined(List<Complaint> all, boolean reasons) {
        return String.join(
                "; ",
                all.stream()
                        .map(complaint -> reasons ? complaint.reason() : complaint.remedy())
                        .filter(text -> !text.isEmpty())
                        .distinct()
                        .toList());
    }
}
