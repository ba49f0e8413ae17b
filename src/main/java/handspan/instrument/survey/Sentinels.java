package handspan.instrument.survey;

import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.SensorKind;
import handspan.number.units.Figures;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.DoublePredicate;

/**
 * Numbers by which a sensor says that it sees nothing: beyond where a hand can be, and again and again the same within
 * 0.1 %, with next to nothing beside them. A far wall scatters, a sentinel does not.
 *
 * @param known numbers of that sort which the sensor's kind refuses anyway
 * @param learned numbers that only their repetition gives away
 * @param share01 of the lines whose number meant no reading, for whatever reason
 */
public record Sentinels(List<Double> known, List<Double> learned, double share01) {
    /** No hand is farther than an arm, and rangers see none farther (time-of-flight range: 1.2 m). */
    private static final double FARTHEST_MM = 1200;

    /** Under this a jump from afar is suspect: floors of 0 to 20 mm are printed for want of an echo. */
    private static final double NEAREST_MM = 25;

    private static final double SAME = 0.001;
    private static final double BESIDE = 0.01;
    private static final double BESIDE_MM = 5;
    private static final double BESIDE_MOST01 = 0.1;
    private static final int OFTEN = 5;
    private static final double OFTEN01 = 0.02;
    private static final int MOST = 4;
    private static final List<Double> CLASSIC = List.of(-1.0, 8190.0, 8191.0, 65_535.0);

    /** Copies the lists. */
    public Sentinels {
        known = List.copyOf(known);
        learned = List.copyOf(learned);
    }

    static Sentinels in(Series series, ChannelSpec spec, Measure measure) {
        Sentinels found = find(series, spec, measure);
        int nothing = 0;
        for (int i = 0; i < series.size(); i++) {
            boolean none = !series.isValid(i) || found.isLearned(series.value(i));
            nothing += series.isPresent(i) && none ? 1 : 0;
        }
        return new Sentinels(found.known, found.learned, nothing / (double) Math.max(1, series.size()));
    }

    private static Sentinels find(Series series, ChannelSpec spec, Measure measure) {
        double[] valid = series.readings();
        double[] refused = refused(series);
        if (spec.kind() == SensorKind.UNSCALED) {
            return new Sentinels(List.of(), classic(valid), 0);
        }
        if (!measure.isLength()) {
            // ends of a converter's scale are light or dark, not a word for nothing
            double full = 1.001 * measure.inUnit(0, 1023);
            return new Sentinels(repeated(refused, refused, v -> v < 0 || v > full, measure), List.of(), 0);
        }
        double[] all = concat(valid, refused);
        List<Double> learned =
                repeated(valid, valid, v -> measure.size(v) > FARTHEST_MM || measure.size(v) < NEAREST_MM, measure);
        return new Sentinels(repeated(refused, all, v -> true, measure), learned, 0);
    }

    /** Whether a number is one of the learned ones. */
    boolean isLearned(double value) {
        return learned.stream().anyMatch(sentinel -> same(value, sentinel));
    }

    /** All of them, those known first. */
    public List<Double> values() {
        List<Double> all = new ArrayList<>(known);
        all.addAll(learned);
        return List.copyOf(all);
    }

    /** All of them in words; empty where there are none. */
    public String words() {
        return words(values());
    }

    Optional<Complaint> remark() {
        return learned.isEmpty()
                ? Optional.empty()
                : Optional.of(Complaint.remark(words(learned) + " taken as no reading"));
    }

    /** Numbers in words, as the board printed them. */
    static String words(List<Double> values) {
        return String.join(
                " and ",
                values.stream()
                        .map(value -> Figures.text(value, value == Math.rint(value) ? 0 : 2))
                        .toList());
    }

    private static List<Double> repeated(double[] candidates, double[] all, DoublePredicate beyond, Measure measure) {
        double[] left = Arrays.stream(candidates).filter(beyond).sorted().toArray();
        double often = Math.max(OFTEN, OFTEN01 * left.length);
        List<Double> found = new ArrayList<>();
        while (left.length >= often && found.size() < MOST) {
            double value = commonest(left);
            long count = Arrays.stream(left).filter(v -> same(v, value)).count();
            if (count < often) {
                break;
            }
            double besideWithin = Math.max(BESIDE * Math.abs(value), BESIDE_MM / Math.max(1e-9, measure.perUnit()));
            long beside = Arrays.stream(all)
                    .filter(v -> !same(v, value) && Math.abs(v - value) <= besideWithin)
                    .count();
            if (beside <= BESIDE_MOST01 * count) {
                found.add(value);
            }
            left = Arrays.stream(left).filter(v -> !same(v, value)).toArray();
        }
        return found;
    }

    /** Of sorted values. */
    private static double commonest(double[] sorted) {
        double best = sorted[0];
        int most = 0;
        int from = 0;
        for (int i = 0; i < sorted.length; i++) {
            from = sorted[i] == sorted[from] ? from : i;
            if (i - from + 1 > most) {
                most = i - from + 1;
                best = sorted[i];
            }
        }
        return best;
    }

    /** Of a number that may be anything only these are known, and only outside of all the others. */
    private static List<Double> classic(double[] readings) {
        double[] others =
                Arrays.stream(readings).filter(v -> !CLASSIC.contains(v)).toArray();
        double least = Arrays.stream(others).min().orElse(0);
        double most = Arrays.stream(others).max().orElse(0);
        return CLASSIC.stream()
                .filter(value -> value < least - 0.5 * (most - least) || value > most + (most - least))
                .filter(value -> Arrays.stream(readings).filter(v -> v == value).count() >= OFTEN)
                .toList();
    }

    private static boolean same(double value, double sentinel) {
        return Math.abs(value - sentinel) <= SAME * Math.abs(sentinel);
    }

    private static double[] refused(Series series) {
        double[] refused = new double[series.size()];
        int count = 0;
        for (int i = 0; i < series.size(); i++) {
            if (!series.isValid(i) && series.isPresent(i)) {
                refused[count++] = series.value(i);
            }
        }
        return Arrays.copyOf(refused, count);
    }

    private static double[] concat(double[] a, double[] b) {
        double[] both = Arrays.copyOf(a, a.length + b.length);
        System.arraycopy(b, 0, both, a.length, b.length);
        return both;
    }
}
