package handspan.room.budget;

import handspan.instrument.sensor.Air;
import handspan.instrument.sensor.Instrument;
import handspan.instrument.sensor.Sensor;
import handspan.instrument.survey.ChannelReport;
import handspan.instrument.survey.Drift;
import handspan.instrument.survey.Verdict;
import handspan.number.units.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a survey found about one sensor, in the words in which a player is told.
 *
 * @param verdict in one word
 * @param judgement which channel, the verdict and why
 * @param held how still it was held and what was measured then; empty where it was not held
 * @param feel how it would feel to play; empty where that can't be told
 * @param remedy what to do; empty when there is nothing to do
 */
public record SurveyWords(Verdict verdict, String judgement, String held, String feel, String remedy) {
    /** The words for a report; works out how the sensor would feel, which takes a moment. */
    public static SurveyWords of(ChannelReport report) {
        String judgement = "channel " + report.name() + " ("
                + report.spec().kind().word() + "): " + report.verdict().word() + " - " + report.reason();
        String feel = feel(report)
                .map(it -> "over two octaves in 400 mm " + it.words())
                .orElse("");
        return new SurveyWords(
                report.verdict(), judgement, report.heldCount() > 0 ? held(report) : "", feel, report.remedy());
    }

    /** How a surveyed sensor would feel; empty where it measures no length, or was not held still. */
    public static Optional<FeelBudget> feel(ChannelReport report) {
        double noiseMm = report.noiseMm();
        if (!(noiseMm >= 0) || report.heldCount() == 0 || !(report.ratePerS() > 0)) {
            return Optional.empty();
        }
        double measuringMs = Sensor.of(report.spec(), Air.USUAL, Instrument.USUAL_REFERENCE_VOLTS)
                .measuringMs();
        return Optional.of(FeelBudget.ofSensor(noiseMm, report.ratePerS(), measuringMs));
    }

    private static String held(ChannelReport report) {
        return "held for " + Figures.text(report.heldCount() / Math.max(1e-9, report.ratePerS()), 1) + " s ("
                + Figures.count(report.heldCount()) + " readings) at " + Figures.text(report.centre(), 1) + " "
                + report.spec().unit().word() + ": standard deviation " + Figures.text(report.noise(), 2) + ", step "
                + Figures.text(report.step(), 2) + ", " + report.outliers() + " outliers, "
                + Figures.percent(report.dropouts01()) + " missing" + more(report);
    }

    /** Drift and numbers for no reading, where they are known. */
    private static String more(ChannelReport report) {
        List<String> words = new ArrayList<>();
        report.findings()
                .drift()
                .filter(Drift::isTelling)
                .ifPresent(drift -> words.add(", slope " + Figures.text(drift.perMin(), 2) + " a minute ("
                        + Figures.text(drift.lowPerMin(), 2) + " to " + Figures.text(drift.highPerMin(), 2) + ")"));
        report.findings()
                .drift()
                .filter(drift -> !Double.isNaN(drift.slowAt3S()))
                .ifPresent(drift -> words.add(", slow part over 3 s " + Figures.text(drift.slowAt3S(), 2)));
        if (!report.findings().sentinels().values().isEmpty()) {
            words.add(", no reading is " + report.findings().sentinels().words());
        }
        return String.join("", words);
    }
}
