package handspan.instrument.survey;

import handspan.instrument.line.LineShape;
import handspan.instrument.line.LineShape.Nature;
import handspan.instrument.line.Reading;
import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.SensorKind;
import handspan.instrument.sensor.Unit;
import handspan.number.units.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * Proposes what each slot of a line is, from its label, its unit and its numbers. Labels and units count first; without
 * them, sentinels that only laser rangers print, then whether all fits a converter's counts. Owned by one thread.
 */
public final class ChannelProposer {
    /** As many values that rise each time are no accident. */
    private static final int SURE_COUNT = 15;

    /** What sensors without a hand and converters at an end of their scale print again and again. */
    private static final Set<Double> NOTHING = Set.of(-1.0, 0.0, 255.0, 1023.0, 4095.0, 38_000.0);

    /** Labels of what boards print beside their sensors; such a number counts as no hand once it does not change. */
    private static final Set<String> ASIDE = Set.of(
            "min", "max", "lo", "hi", "low", "high", "lower", "upper", "st", "status", "state", "mode", "err", "error");

    private final LineShape shape;
    private final double[] least;
    private final double[] most;
    private final long[] count;
    private final boolean[] rangerSentinel;
    private final boolean[] fraction;
    private final boolean[] rising;
    private final boolean[] byOne;
    private final double[] last;

    /** A proposer for a learned shape. */
    public ChannelProposer(LineShape shape) {
        int n = shape.slots().size();
        this.shape = shape;
        this.least = new double[n];
        this.most = new double[n];
        this.count = new long[n];
        this.rangerSentinel = new boolean[n];
        this.fraction = new boolean[n];
        this.rising = new boolean[n];
        this.byOne = new boolean[n];
        this.last = new double[n];
        java.util.Arrays.fill(rising, true);
        java.util.Arrays.fill(byOne, true);
        java.util.Arrays.fill(least, Double.POSITIVE_INFINITY);
        java.util.Arrays.fill(most, Double.NEGATIVE_INFINITY);
    }

    /** Takes a reading. */
    public void onReading(Reading reading) {
        for (int i = 0; i < count.length; i++) {
            if (!reading.has(i)) {
                continue;
            }
            double value = reading.value(i);
            rising[i] &= count[i] == 0 || value > last[i];
            byOne[i] &= count[i] == 0 || Double.compare(value, last[i] + 1) == 0;
            last[i] = value;
            count[i]++;
            if (value == 8190 || value == 8191 || value == 65_535) {
                rangerSentinel[i] = true;
            } else {
                least[i] = Math.min(least[i], value);
                most[i] = Math.max(most[i], value);
                fraction[i] |= value != Math.rint(value);
            }
        }
    }

    /** One proposal for each slot, in their order. */
    public List<ChannelGuess> guesses() {
        List<ChannelGuess> guesses = new ArrayList<>();
        List<Nature> natures = natures();
        for (int i = 0; i < count.length; i++) {
            ChannelGuess guess = guess(i);
            boolean constant = natures.get(i) == Nature.CONSTANT;
            guesses.add(new ChannelGuess(
                    guess.spec(),
                    guess.sure() && !constant,
                    guess.evidence() + (constant ? "; never changes: leave it out" : ""),
                    natures.get(i)));
        }
        return guesses;
    }

    private ChannelGuess guess(int i) {
        LineShape.Slot slot = shape.slots().get(i);
        String label = label(i);
        String unit = slot.unit().toLowerCase(Locale.ROOT);
        String name = shape.nameOf(i);
        boolean echo = label.contains("echo") || label.equals("us") || label.contains("sonar");
        if (unit.equals("mm") || unit.equals("cm") || unit.startsWith("in")) {
            Unit length = unit.equals("mm") ? Unit.MM : unit.equals("cm") ? Unit.CM : Unit.IN;
            SensorKind kind = echo && length != Unit.MM ? SensorKind.ECHO : SensorKind.DISTANCE;
            return sure(name, kind, length, "its unit says " + length.word());
        }
        if (unit.equals("us")
                || unit.endsWith("\u00b5s")
                || unit.endsWith("\u03bcs")
                || label.equals("us")
                || label.contains("echo")) {
            return sure(name, SensorKind.ECHO, Unit.US, "its label or unit says microseconds of echo");
        }
        if (label.startsWith("ir") || label.contains("infrared")) {
            if (unit.equals("v")) {
                return sure(name, SensorKind.INFRARED, Unit.V, "its label speaks of infrared; " + span(i));
            }
            if (most[i] <= 4095 && !fraction[i]) {
                return sure(name, SensorKind.INFRARED, counts(i), "its label speaks of infrared; " + span(i));
            }
        }
        boolean light = label.contains("light") || label.contains("lux") || label.contains("ldr");
        if (light || (label.startsWith("l") && !rangerSentinel[i])) {
            if (unit.equals("v") && !label.startsWith("le")) {
                return sure(name, SensorKind.PHOTORESISTOR, Unit.V, "its label speaks of light; " + span(i));
            }
            if (most[i] <= 4095 && !label.startsWith("le")) {
                return sure(name, SensorKind.PHOTORESISTOR, counts(i), "its label speaks of light; " + span(i));
            }
        }
        if (rangerSentinel[i]) {
            return sure(name, SensorKind.DISTANCE, Unit.MM, "prints 8190, 8191 or 65535 when it sees nothing");
        }
        if (label.startsWith("d") || label.contains("range")) {
            Unit length = fraction[i] || most[i] < 100 ? Unit.CM : Unit.MM;
            return unsure(name, SensorKind.DISTANCE, length, "its label speaks of distance, no unit; " + span(i));
        }
        if (isCounter(i)) {
            return unsure(name, SensorKind.UNSCALED, Unit.NONE, "rises with every line: a counter or a time, no hand");
        }
        if (fraction[i] && least[i] >= 0 && most[i] <= 5.5) {
            return unsure(name, SensorKind.PHOTORESISTOR, Unit.V, "looks like a voltage; " + span(i));
        }
        if (i == firstOfHands() && count[i] > 0 && least[i] >= 0 && most[i] < 4000) {
            return unsure(
                    name, SensorKind.DISTANCE, Unit.MM, "the first number of a line, often a distance; " + span(i));
        }
        if (count[i] > 0 && least[i] >= 0 && most[i] <= 4095 && !fraction[i]) {
            return unsure(name, SensorKind.PHOTORESISTOR, counts(i), "whole numbers of a converter; " + span(i));
        }
        return unsure(name, SensorKind.UNSCALED, Unit.NONE, count[i] == 0 ? "no number seen yet" : span(i));
    }

    private String label(int i) {
        return shape.slots().get(i).label().toLowerCase(Locale.ROOT).strip();
    }

    private boolean isCounter(int i) {
        return rising[i] && count[i] >= SURE_COUNT;
    }

    private int firstOfHands() {
        int first = 0;
        while (first < count.length - 1 && isCounter(first)) {
            first++;
        }
        return first;
    }

    private Unit counts(int i) {
        return most[i] <= 1023 ? Unit.COUNTS10 : Unit.COUNTS12;
    }

    private String span(int i) {
        int decimals = fraction[i] ? 2 : 0;
        if (count[i] == 0 || least[i] > most[i]) {
            return "no value yet";
        }
        String from = Figures.text(least[i], decimals);
        return least[i] == most[i] ? "always " + from : "from " + from + " to " + Figures.text(most[i], decimals);
    }

    /**
     * What each slot does from line to line, in their order: a hand away may look like a number that never changes, so
     * that numbers by which sensors say that they see nothing do not count, unless their label says that they are no
     * sensor's.
     */
    public List<Nature> natures() {
        List<Nature> natures = new ArrayList<>();
        for (int i = 0; i < count.length; i++) {
            boolean one = count[i] >= SURE_COUNT && most[i] == least[i] && !rangerSentinel[i];
            boolean nothing = NOTHING.contains(most[i]) && !ASIDE.contains(label(i));
            natures.add(
                    isCounter(i)
                            ? byOne[i] ? Nature.COUNTER : Nature.TIME
                            : one && !nothing ? Nature.CONSTANT : Nature.LIVE);
        }
        return natures;
    }

    private static ChannelGuess sure(String name, SensorKind kind, Unit unit, String evidence) {
        return new ChannelGuess(new ChannelSpec(name, kind, unit), true, evidence, Nature.LIVE);
    }

    private static ChannelGuess unsure(String name, SensorKind kind, Unit unit, String evidence) {
        return new ChannelGuess(new ChannelSpec(name, kind, unit), false, evidence, Nature.LIVE);
    }
}
