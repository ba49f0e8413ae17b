package handspan.outside.simulate;

import handspan.number.units.Figures;
import java.util.List;

/**
 * How a board writes its numbers into a line.
 *
 * @param separator between two numbers
 * @param labels before each number, as printed ("D:", "Distance: "); an empty list for none
 * @param units after each number, as printed (" cm"); an empty list for none
 */
public record LineStyle(String separator, List<String> labels, List<String> units) {
    /** Carriage return and line feed, as a board's println writes them. */
    public static final String LINE_END = "\r\n";

    public LineStyle {
        labels = List.copyOf(labels);
        units = List.copyOf(units);
    }

    /** Bare numbers, for example {@code 234,567}. */
    public static LineStyle plain(String separator) {
        return new LineStyle(separator, List.of(), List.of());
    }

    /** Labelled numbers without units, for example {@code D:23.4 L:567}. */
    public static LineStyle labelled(String separator, String... labels) {
        return new LineStyle(separator, List.of(labels), List.of());
    }

    /** One labelled number with its unit, for example {@code Distance: 23 cm}. */
    public static LineStyle withUnit(String label, String unit) {
        return new LineStyle("", List.of(label), List.of(unit));
    }

    /** One number with its label and unit, decimal point in every locale. */
    String field(int channel, double value, int decimals) {
        String number = decimals == 0 ? Long.toString(Math.round(value)) : Figures.text(value, decimals);
        return at(labels, channel) + number + at(units, channel);
    }

    private static String at(List<String> texts, int channel) {
        return channel < texts.size() ? texts.get(channel) : "";
    }
}
