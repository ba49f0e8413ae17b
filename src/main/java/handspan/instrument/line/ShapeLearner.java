package handspan.instrument.line;

import java.util.ArrayList;
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

    private final List<byte[]> lines = new ArrayList<>();
    private final LineTokens tokens = new LineTokens();

    /**
     * Takes a line.
     *
     * @param line bytes without the line end; copied
     * @param length how many of them
     * @return whether enough lines are there
     */
    public boolean offer(byte[] line, int length) {
        if (lines.size() < LINES) {
            lines.add(java.util.Arrays.copyOf(line, length));
        }
        return lines.size() == LINES;
    }

    /** The lines taken so far, oldest first. */
    public List<byte[]> lines() {
        return List.copyOf(lines);
    }

    /** What the lines so far have in common; empty when none holds a number, or no label comes twice. */
    public Optional<LineShape> learn() {
        char separator = separator();
        boolean decimalComma =
                (separator == ';' || separator == '|' || separator == '\t') && commaStandsBetweenDigits();
        Map<String, List<byte[]>> alike = new LinkedHashMap<>();
        for (byte[] line : lines) {
            if (tokens.split(line, line.length, separator, decimalComma) && tokens.count() > 0) {
                alike.computeIfAbsent(signature(), key -> new ArrayList<>()).add(line);
            }
        }
        if (alike.isEmpty()) {
            return Optional.empty();
        }
        Map.Entry<String, List<byte[]>> most = alike.entrySet().stream()
                .reduce((a, b) -> b.getValue().size() > a.getValue().size() ? b : a)
                .orElseThrow();
        if (most.getKey().equals(LABELLED)) {
            return byLabel(separator, decimalComma);
        }
        return Optional.of(like(most.getValue().get(0), separator, decimalComma));
    }

    private char separator() {
        for (char candidate : new char[] {';', '|', '\t', ','}) {
            int holding = 0;
            for (byte[] line : lines) {
                holding += holds(line, candidate) ? 1 : 0;
            }
            if (2 * holding > lines.size()) {
                return candidate;
            }
        }
        return ' ';
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

    private boolean commaStandsBetweenDigits() {
        boolean seen = false;
        for (byte[] line : lines) {
            for (int i = 1; i < line.length - 1; i++) {
                if (line[i] == ',') {
                    if (!Character.isDigit(line[i - 1]) || !Character.isDigit(line[i + 1])) {
                        return false;
                    }
                    seen = true;
                }
            }
        }
        return seen;
    }

    /** What makes two lines alike: {@link #LABELLED} when every number has a label of its own. */
    private String signature() {
        Set<String> labels = new HashSet<>();
        StringBuilder all = new StringBuilder();
        for (int i = 0; i < tokens.count(); i++) {
            String key = LineShape.key(tokens.label(i));
            all.append(key).append('/').append(LineShape.key(tokens.unit(i))).append(' ');
            if (!key.isEmpty()) {
                labels.add(key);
            }
        }
        return labels.size() == tokens.count() ? LABELLED : "P" + tokens.fields() + " " + all;
    }

    private Optional<LineShape> byLabel(char separator, boolean decimalComma) {
        Map<String, LineShape.Slot> slots = new LinkedHashMap<>();
        Map<String, Integer> seen = new LinkedHashMap<>();
        int most = 0;
        for (byte[] line : lines) {
            if (!tokens.split(line, line.length, separator, decimalComma)) {
                continue;
            }
            most = Math.max(most, tokens.count());
            for (int i = 0; i < tokens.count(); i++) {
                String key = LineShape.key(tokens.label(i));
                slots.putIfAbsent(key, new LineShape.Slot(tokens.label(i), tokens.unit(i), slots.size()));
                seen.merge(key, 1, Integer::sum);
            }
        }
        // a label seen once among many lines is a message, not a channel
        boolean many = lines.size() >= 4;
        List<LineShape.Slot> kept = new ArrayList<>();
        slots.forEach((key, slot) -> {
            if (kept.size() < LineShape.MOST_SLOTS && (!many || seen.getOrDefault(key, 0) > 1)) {
                kept.add(new LineShape.Slot(slot.label(), slot.unit(), kept.size()));
            }
        });
        return kept.isEmpty()
                ? Optional.empty()
                : Optional.of(new LineShape(separator, decimalComma, LineShape.Matching.BY_LABEL, most, kept));
    }

    private LineShape like(byte[] line, char separator, boolean decimalComma) {
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
        return new LineShape(separator, decimalComma, matching, oneEach ? tokens.fields() : tokens.count(), slots);
    }
}
