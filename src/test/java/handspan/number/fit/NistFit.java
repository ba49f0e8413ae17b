package handspan.number.fit;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/**
 * A data set of NIST/ITL Statistical Reference Datasets with certified results, read from the test resources.
 *
 * @param name of the set
 * @param starts starting values, none for polynomials
 * @param certified parameters
 * @param deviations certified standard deviations of these
 * @param residualDeviation certified residual standard deviation
 * @param x measured
 * @param y measured
 */
record NistFit(
        String name,
        List<List<Double>> starts,
        List<Double> certified,
        List<Double> deviations,
        double residualDeviation,
        List<Double> x,
        List<Double> y) {
    /** The set of a name in {@code nist-curves.txt} or {@code nist-polynomials.txt}. */
    static NistFit named(String resource, String name) {
        List<List<Double>> starts = new ArrayList<>();
        List<Double> certified = new ArrayList<>();
        List<Double> deviations = new ArrayList<>();
        List<Double> residual = new ArrayList<>();
        List<Double> points = new ArrayList<>();
        boolean inSet = false;
        for (String line : text(resource).split("\n", -1)) {
            String[] words = line.strip().split(" ", 2);
            switch (words[0]) {
                case "set" -> inSet = words[1].equals(name);
                case "#", "", "points", "sum-of-squares" -> {}
                default -> {
                    if (inSet) {
                        List<Double> into = switch (words[0]) {
                            case "start" -> new ArrayList<>();
                            case "certified" -> certified;
                            case "deviations" -> deviations;
                            case "residual-deviation" -> residual;
                            default -> points;
                        };
                        into.addAll(numbers(into == points ? line : words[1]));
                        if (words[0].equals("start")) {
                            starts.add(into);
                        }
                    }
                }
            }
        }
        return new NistFit(name, starts, certified, deviations, residual.get(0), every(points, 0), every(points, 1));
    }

    double[] xArray() {
        return array(x);
    }

    double[] yArray() {
        return array(y);
    }

    static double[] array(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static List<Double> every(List<Double> pairs, int offset) {
        List<Double> values = new ArrayList<>();
        for (int i = offset; i < pairs.size(); i += 2) {
            values.add(pairs.get(i));
        }
        return values;
    }

    private static List<Double> numbers(String text) {
        return Arrays.stream(text.strip().split("\\s+", -1))
                .map(Double::valueOf)
                .toList();
    }

    private static String text(String resource) {
        try (InputStream in = Objects.requireNonNull(NistFit.class.getResourceAsStream(resource), resource)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public String toString() {
        return name;
    }
}
