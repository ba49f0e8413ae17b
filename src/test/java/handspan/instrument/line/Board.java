package handspan.instrument.line;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Objects;
import java.util.function.IntFunction;
import org.jspecify.annotations.Nullable;

/** A board's lines, and the reader that was learned from the first of them. */
final class Board {
    final Rejections rejections = new Rejections();

    final LineShape shape;

    private final LineReader reader;

    private Board(LineShape shape) {
        this.shape = shape;
        this.reader = new LineReader(shape, rejections);
    }

    /** Learned from as many lines as the learner wants. */
    static Board learnedFrom(IntFunction<String> lines) {
        ShapeLearner learner = new ShapeLearner();
        int i = 0;
        while (!offer(learner, lines.apply(i))) {
            i++;
        }
        return new Board(shape(learner.learn()));
    }

    /** The shape of a learning; none for lines that can be read in two ways. */
    static LineShape shape(Learning learning) {
        if (learning instanceof Learning.Learned learned) {
            return learned.shape();
        }
        throw new AssertionError(learning);
    }

    static boolean isLearned(Learning learning) {
        return learning instanceof Learning.Learned;
    }

    /** Learned from these lines, over and over. */
    static Board learnedFrom(String... lines) {
        return learnedFrom(i -> lines[i % lines.length]);
    }

    static boolean offer(ShapeLearner learner, String line) {
        byte[] bytes = bytes(line);
        return learner.offer(bytes, bytes.length);
    }

    static byte[] bytes(String line) {
        return line.getBytes(StandardCharsets.ISO_8859_1);
    }

    @Nullable
    Reading read(String line) {
        return read(line, 0);
    }

    /** Reads line number i of a board that prints one every 20 ms. */
    @Nullable
    Reading read(String line, int i) {
        byte[] bytes = bytes(line);
        return reader.read(bytes, bytes.length, 1 + 20_000_000L * i);
    }

    /** The values of a line, with {@code null} for a slot without a number. */
    @Nullable
    Double[] values(String line) {
        return values(line, 0);
    }

    /** The values of line number i. */
    @Nullable
    Double[] values(String line, int i) {
        Reading reading =
                Objects.requireNonNull(read(line, i), () -> "rejected: " + line + " " + rejections.byReason());
        @Nullable Double[] values = new Double[reading.size()];
        Arrays.setAll(values, slot -> reading.has(slot) ? (Double) reading.value(slot) : null);
        return values;
    }

    /** Why a line was rejected; {@code READ} when it was not. */
    String rejection(String line) {
        var before = rejections.byReason();
        if (read(line) != null) {
            return "READ";
        }
        return rejections.byReason().entrySet().stream()
                .filter(entry -> !entry.getValue().equals(before.getOrDefault(entry.getKey(), 0L)))
                .findFirst()
                .orElseThrow()
                .getKey()
                .name();
    }
}
