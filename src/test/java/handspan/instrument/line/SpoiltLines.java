package handspan.instrument.line;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import java.util.function.IntFunction;

/**
 * Lines of all the shapes of {@link LineShapesTest}, most of them spoilt: cut, glued, bytes changed, numbers blown up.
 */
public final class SpoiltLines {
    private static final String[] NUMBERS = {
        "NaN",
        "inf",
        "-inf",
        "1e308",
        "-1e308",
        "1e999",
        "1e-999",
        "-0",
        "99999999999999999999999",
        "0x",
        "0xFFFFFFFF",
        "12:03:11",
        "--1",
        "1.2.3",
        "+",
        ".",
        ",",
        "",
        ">200",
        "\u001b[",
        "*5E",
        "1e",
        "-"
    };
    private static final String LIKED =
            ":=,;|\t .-+eExX0123456789nanifcm\"{}<>[]()*$#\u001b\u0000\u00b5\u0080\u00c3\u00ff";

    private final List<Row> rows = LineShapesTest.rows().toList();
    private final Random random;

    /** Repeats itself with the same seed. */
    public SpoiltLines(long seed) {
        random = new Random(seed);
    }

    /** How many shapes there are. */
    public int shapes() {
        return rows.size();
    }

    /** Line number i of a shape with its end, as a bad link may deliver it. */
    public byte[] line(int shape, int i) {
        IntFunction<String> line = rows.get(shape).line();
        StringBuilder text = new StringBuilder(line.apply(i));
        int changes = Math.max(0, random.nextInt(6) - 2);
        for (int change = 0; change < changes; change++) {
            spoil(text, line.apply(i + 1));
        }
        String end = random.nextInt(40) == 0 ? "" : random.nextInt(10) == 0 ? "\r" : "\r\n";
        return (text + end).getBytes(StandardCharsets.ISO_8859_1);
    }

    private void spoil(StringBuilder text, String next) {
        int at = text.length() == 0 ? 0 : random.nextInt(text.length());
        switch (random.nextInt(6)) {
            case 0 -> text.setLength(at);
            case 1 -> text.delete(0, at);
            case 2 -> text.insert(at, next);
            case 3 -> text.insert(at, NUMBERS[random.nextInt(NUMBERS.length)]);
            case 4 -> text.insert(at, LIKED.charAt(random.nextInt(LIKED.length())));
            default -> {
                if (text.length() > 0) {
                    text.setCharAt(at, (char) random.nextInt(256));
                }
            }
        }
    }
}
