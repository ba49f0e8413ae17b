package handspan.instrument.line;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Learns a line shape from the first lines: the separator that most lines hold, then what most lines have in common.
 * Owned by one thread.
 */
public final class ShapeLearner {
    /** Lines looked at. */
    public static final int LINES = 20;

    private static final String LABELLED = "labelled";

    /** Of lines alike, so many must have a thing in common for it to count: one in ten may be cut. */
    private static final double MOST01 = 0.9;

    /** Fewer of all lines than this say nothing of the others: what comes is garbled, or only starting. */
    private static final double FEW01 = 0.2;

    /** A label in no more of the lines than this is a remark. */
    private static final double SELDOM01 = 0.12;

    private final List<byte[]> lines = new ArrayList<>();
    private final CommaRule comma;
    private final LineTokens tokens = new LineTokens();

    /** A learner that asks what commas between digits stand for. */
    public ShapeLearner() {
        this(CommaRule.ASK);
    }

    /** A learner that is told what they stand for. */
    public ShapeLearner(CommaRule comma) {
        this.comma = comma;
    }

    /**
     * Takes a line.
     *
     * @param line bytes without the line end; copied
     * @param length how many of them
     * @return whether enough lines are there
     */
    public boolean offer(byte[] line, int length) {
        if (lines.size() < LINES) {
            lines.add(Arrays.copyOf(line, length));
        }
        return lines.size() == LINES;
    }

    /** The lines taken so far, oldest first. */
    public List<byte[]> lines() {
        return List.copyOf(lines);
    }

    /** What the lines so far have in common. */
    public Learning learn() {
        List<byte[]> joined = LabelAbove.joined(lines);
        boolean above = joined.size() < lines.size();
        char separator = separator(joined);
        if (separator == ';' || separator == '|' || separator == '\t') {
            return made(joined, separator, Commas.in(joined).between(), above);
        }
        Commas commas = Commas.in(joined);
        boolean asked = comma == CommaRule.ASK && separator == ',' && commas.isAmbiguous();
        if (asked) {
            Optional<LineShape> parts = shape(joined, ',', false, above);
            Optional<LineShape> decimal = shape(joined, ' ', true, above);
            return parts.isPresent() && decimal.isPresent()
                    ? new Learning.Ambiguous(question(commas.example()), parts.get(), decimal.get())
                    : new Learning.Nothing();
        }
        boolean point = separator == ','
                && commas.between()
                && (comma == CommaRule.ASK ? commas.decimal() && !commas.parting() : comma == CommaRule.DECIMAL);
        Learning learning = made(joined, point ? ' ' : separator, point, above);
        return separator == ' ' && mostHold(joined, ':') && areNoLabels(learning)
                ? made(joined, ':', false, above)
                : learning;
    }

    /** Numbers before a colon that change from line to line, and not in turn, are numbers. */
    private static boolean areNoLabels(Learning learning) {
        if (!(learning instanceof Learning.Learned learned)) {
            return true;
        }
        LineShape shape = learned.shape();
        return shape.matching() == LineShape.Matching.BY_LABEL
                && shape.fieldCount() == 1
                && shape.slots().size() > 1
                && shape.layout().linesPerReading() == 1
                && shape.slots().stream().allMatch(slot -> slot.label().matches("[0-9.]+"));
    }

    /** Why a line is of no use where nothing could be learned. */
    public Rejection reason(byte[] line) {
        if (!tokens.split(line, line.length, ' ', false)) {
            return tokens.failure();
        }
        return tokens.hasNumber() ? Rejection.OTHER_LABEL : Rejection.NO_NUMBER;
    }

    private static String question(String example) {
        return "'" + example + "' can be one number with a decimal comma, or two numbers: say --comma decimal, or"
                + " --comma parts";
    }

    private Learning made(List<byte[]> from, char separator, boolean decimalComma, boolean above) {
        Optional<LineShape> shape = shape(from, separator, decimalComma, above);
        return shape.isPresent() ? new Learning.Learned(shape.get()) : new Learning.Nothing();
    }

    private Optional<LineShape> shape(List<byte[]> from, char separator, boolean decimalComma, boolean above) {
        Map<String, List<byte[]>> alike = new LinkedHashMap<>();
        for (byte[] line : from) {
            if (tokens.split(line, line.length, separator, decimalComma) && tokens.hasNumber()) {
                alike.computeIfAbsent(signature(), key -> new ArrayList<>()).add(line);
            }
        }
        if (alike.isEmpty()) {
            return Optional.empty();
        }
        Map.Entry<String, List<byte[]>> most = alike.entrySet().stream()
                .reduce((a, b) -> b.getValue().size() > a.getValue().size() ? b : a)
                .orElseThrow();
        if (most.getValue().size() < FEW01 * from.size()) {
            return Optional.empty();
        }
        Optional<LineShape> found = most.getKey().equals(LABELLED)
                ? byLabel(most.getValue(), separator, decimalComma)
                : Optional.of(like(most.getValue(), separator, decimalComma));
        return found.map(shape -> shape.within(layout(most.getValue(), shape, above)));
    }

    private static char separator(List<byte[]> lines) {
        for (char candidate : new char[] {';', '|', '\t', ','}) {
            if (mostHold(lines, candidate)) {
                return candidate;
            }
        }
        return ' ';
    }

    private static boolean mostHold(List<byte[]> lines, char wanted) {
        int holding = 0;
        for (byte[] line : lines) {
            holding += holds(line, wanted) ? 1 : 0;
        }
        return 2 * holding > lines.size();
    }

    /** Whether it stands between two other characters: at the end of a line it may close a frame. */
    private static boolean holds(byte[] line, char wanted) {
        int last = line.length - 1;
        while (last > 0 && line[last] <= ' ' && line[last] >= 0) {
            last--;
        }
        for (int i = 1; i < last; i++) {
            if (line[i] == wanted) {
                return true;
            }
        }
        return false;
    }

    /** What makes two lines alike: {@link #LABELLED} when every number has a label of its own. */
    private String signature() {
        Set<String> labels = new HashSet<>();
        StringBuilder all = new StringBuilder();
        for (int i = 0; i < tokens.count(); i++) {
            String key = LineShape.key(tokens.label(i));
            all.append(key).append('/');
            if (!key.isEmpty()) {
                labels.add(key);
            }
        }
        return labels.size() == tokens.count() ? LABELLED : "P" + tokens.fields() + " " + all;
    }

    private Optional<LineShape> byLabel(List<byte[]> alike, char separator, boolean decimalComma) {
        Map<String, LineShape.Slot> slots = new LinkedHashMap<>();
        Map<String, Integer> seen = new LinkedHashMap<>();
        Map<String, Integer> sameUnit = new LinkedHashMap<>();
        int most = 0;
        for (byte[] line : alike) {
            tokens.split(line, line.length, separator, decimalComma);
            most = Math.max(most, tokens.count());
            for (int i = 0; i < tokens.count(); i++) {
                int number = i;
                if (!tokens.isMissing(i)) {
                    String key = LineShape.key(tokens.label(i));
                    LineShape.Slot slot = slots.computeIfAbsent(key, first -> slot(number, slots.size()));
                    seen.merge(key, 1, Integer::sum);
                    boolean same = LineShape.key(slot.unit()).equals(LineShape.key(tokens.unit(i)));
                    sameUnit.merge(key, same ? 1 : 0, Integer::sum);
                }
            }
        }
        // a label seen once or twice among many lines is a message, not a channel
        double seldom = alike.size() >= 4 ? Math.max(1, SELDOM01 * alike.size()) : 0;
        List<LineShape.Slot> kept = new ArrayList<>();
        slots.forEach((key, slot) -> {
            int often = seen.getOrDefault(key, 0);
            if (kept.size() < LineShape.MOST_SLOTS && often > seldom) {
                String unit = sameUnit.getOrDefault(key, 0) >= MOST01 * often ? slot.unit() : "";
                kept.add(new LineShape.Slot(slot.label(), unit, kept.size()));
            }
        });
        return kept.isEmpty()
                ? Optional.empty()
                : Optional.of(new LineShape(separator, decimalComma, LineShape.Matching.BY_LABEL, most, kept));
    }

    private LineShape.Slot slot(int number, int position) {
        return new LineShape.Slot(tokens.label(number), tokens.unit(number), position);
    }

    private LineShape like(List<byte[]> alike, char separator, boolean decimalComma) {
        byte[] line = alike.get(0);
        tokens.split(line, line.length, separator, decimalComma);
        boolean oneEach = separator != ' ';
        for (int i = 1; i < tokens.count(); i++) {
            oneEach &= tokens.field(i) != tokens.field(i - 1);
        }
        List<LineShape.Slot> slots = new ArrayList<>();
        for (int i = 0; i < tokens.count(); i++) {
            slots.add(new LineShape.Slot(tokens.label(i), tokens.unit(i), oneEach ? tokens.field(i) : i));
        }
        LineShape.Matching matching = oneEach ? LineShape.Matching.BY_FIELD : LineShape.Matching.BY_ORDER;
        int fieldCount = oneEach ? tokens.fields() : tokens.count();
        return new LineShape(
                separator, decimalComma, matching, fieldCount, withSteadyUnits(alike, slots, separator, decimalComma));
    }

    /** A word after a number that changes from line to line is a remark, not a unit. */
    private List<LineShape.Slot> withSteadyUnits(
            List<byte[]> alike, List<LineShape.Slot> slots, char separator, boolean decimalComma) {
        int[] same = new int[slots.size()];
        for (byte[] line : alike) {
            tokens.split(line, line.length, separator, decimalComma);
            for (int i = 0; i < slots.size(); i++) {
                boolean is = LineShape.key(tokens.unit(i))
                        .equals(LineShape.key(slots.get(i).unit()));
                same[i] += is || tokens.isMissing(i) ? 1 : 0;
            }
        }
        List<LineShape.Slot> steady = new ArrayList<>();
        for (int i = 0; i < slots.size(); i++) {
            LineShape.Slot slot = slots.get(i);
            String unit = same[i] >= MOST01 * alike.size() ? slot.unit() : "";
            steady.add(new LineShape.Slot(slot.label(), unit, slot.position()));
        }
        return steady;
    }

    private LineShape.Layout layout(List<byte[]> alike, LineShape shape, boolean above) {
        char opening = common(alike, true);
        char closing = common(alike, false);
        boolean labelled = shape.matching() == LineShape.Matching.BY_LABEL;
        int perReading = labelled ? cycle(alike, shape) : 1;
        return new LineShape.Layout(opening, closing == shape.separator() ? '\0' : closing, above, perReading);
    }

    /** The character that nearly all lines begin or end with, where it is one that frames. */
    private static char common(List<byte[]> alike, boolean first) {
        Map<Character, Integer> counts = new LinkedHashMap<>();
        for (byte[] line : alike) {
            char c = first ? LineFrame.first(line, line.length) : LineFrame.last(line, line.length);
            counts.merge(c, 1, Integer::sum);
        }
        return counts.entrySet().stream()
                .filter(entry -> LineShape.Layout.FRAMES.indexOf(entry.getKey()) >= 0)
                .filter(entry -> entry.getValue() >= MOST01 * alike.size() && alike.size() > 1)
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse('\0');
    }

    /** How many lines come round until their labels begin again, where no two of them tell of the same number. */
    private int cycle(List<byte[]> alike, LineShape shape) {
        List<Set<String>> told = new ArrayList<>();
        for (byte[] line : alike) {
            tokens.split(line, line.length, shape.separator(), shape.decimalComma());
            Set<String> labels = new HashSet<>();
            for (int i = 0; i < tokens.count(); i++) {
                labels.add(LineShape.key(tokens.label(i)));
            }
            told.add(labels);
        }
        for (int length = 2; length <= Math.min(LineShape.Layout.MOST_LINES, told.size() / 2); length++) {
            if (comesRound(told, length, shape.slots().size())) {
                return length;
            }
        }
        return 1;
    }

    private static boolean comesRound(List<Set<String>> told, int length, int slots) {
        Set<String> union = new HashSet<>();
        int sum = 0;
        for (int i = 0; i < length; i++) {
            union.addAll(told.get(i));
            sum += told.get(i).size();
        }
        if (union.size() != slots || sum != slots) {
            return false;
        }
        for (int i = length; i < told.size(); i++) {
            if (!told.get(i).equals(told.get(i - length))) {
                return false;
            }
        }
        return true;
    }
}
