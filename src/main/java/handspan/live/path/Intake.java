package handspan.live.path;

import handspan.instrument.line.LineReader;
import handspan.instrument.line.LineShape;
import handspan.instrument.line.LineSplitter;
import handspan.instrument.line.Reading;
import handspan.instrument.line.Rejection;
import handspan.instrument.line.Rejections;
import handspan.instrument.line.ShapeLearner;
import handspan.number.units.Nanos;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * The head of the path, shared by all that an instrument can be used for: bytes to lines to readings. Learns the line
 * shape from the first lines unless it is known, and loses none of them while it learns. Owned by the path thread.
 */
public final class Intake {
    /** Readings dropped after each connect: sensors print wrong values while they settle. */
    public static final int SETTLING_READINGS = 5;

    private final LineSplitter splitter = new LineSplitter();
    private final Rejections rejections = new Rejections();
    private final LineDates dates = new LineDates();
    private final LineTap tap;
    private final Consumer<Reading> readings;
    private final Consumer<LineShape> learned;
    private final LineSplitter.Lines lines = new LineSplitter.Lines() {
        @Override
        public void line(byte[] bytes, int length) {
            onLine(bytes, length);
        }

        @Override
        public void tooLong() {
            rejections.count(Rejection.TOO_LONG);
        }
    };

    private @Nullable LineReader reader;
    private ShapeLearner learner = new ShapeLearner();
    private final long[] learnTimes = new long[ShapeLearner.LINES];
    private final long[] learnDates = new long[ShapeLearner.LINES];
    private int learnCount;
    private int settling = SETTLING_READINGS;
    private long nowNanos;
    private long lineCount;
    private long byteCount;
    private byte[] latest = new byte[LineSplitter.LONGEST];
    private int latestLength;

    /**
     * An intake.
     *
     * @param known the line shape where it is remembered; null to learn it
     * @param tap sees each line
     * @param readings takes each reading
     * @param learned told when a shape has been learned
     */
    public Intake(@Nullable LineShape known, LineTap tap, Consumer<Reading> readings, Consumer<LineShape> learned) {
        this.tap = tap;
        this.readings = readings;
        this.learned = learned;
        this.reader = known == null ? null : new LineReader(known, rejections);
    }

    /** The link is there, or there again: a half line is forgotten, the next readings settle. */
    public void onConnected() {
        splitter.restart();
        dates.restart();
        settling = SETTLING_READINGS;
    }

    /** Takes bytes as they came. */
    public void onBytes(byte[] chunk, int count, long timeNanos) {
        nowNanos = timeNanos;
        byteCount += count;
        dates.onChunk(splitter.linesIn(chunk, count), timeNanos);
        splitter.accept(chunk, count, lines);
    }

    /** No more will come: learns from what is there. */
    public void onEnd() {
        if (reader == null && learnCount > 0) {
            learn();
        }
    }

    private void onLine(byte[] bytes, int length) {
        lineCount++;
        System.arraycopy(bytes, 0, latest, 0, length);
        latestLength = length;
        tap.onLine(bytes, length, nowNanos);
        long evenNanos = dates.onLine();
        LineReader known = reader;
        if (known != null) {
            read(known, bytes, length, nowNanos, evenNanos);
            return;
        }
        learnDates[learnCount] = evenNanos;
        learnTimes[learnCount++] = nowNanos;
        boolean enough = learner.offer(bytes, length);
        if (enough || nowNanos - learnTimes[0] > 2 * Nanos.PER_SECOND) {
            learn();
        }
    }

    private void learn() {
        List<byte[]> seen = learner.lines();
        learner.learn().ifPresent(shape -> {
            LineReader made = new LineReader(shape, rejections);
            reader = made;
            learned.accept(shape);
            for (int i = 0; i < seen.size(); i++) {
                read(made, seen.get(i), seen.get(i).length, learnTimes[i], learnDates[i]);
            }
        });
        if (reader == null) {
            seen.forEach(line -> rejections.count(Rejection.NO_NUMBER));
        }
        learner = new ShapeLearner();
        learnCount = 0;
    }

    private void read(LineReader known, byte[] bytes, int length, long timeNanos, long evenNanos) {
        Reading raw = known.read(bytes, length, timeNanos);
        if (raw == null) {
            return;
        }
        Reading reading = dates.dated(raw, evenNanos);
        if (settling > 0) {
            settling--;
            rejections.count(Rejection.SETTLING);
            return;
        }
        readings.accept(reading);
    }

    /** The shape in use; null while learning. */
    public @Nullable LineShape shape() {
        return reader == null ? null : reader.shape();
    }

    /** How lines arrive. */
    public Arrivals arrivals() {
        return dates.arrivals(shape());
    }

    /** Lines rejected, by reason. */
    public Rejections rejections() {
        return rejections;
    }

    /** Lines seen, whether or not they became readings. */
    public long lineCount() {
        return lineCount;
    }

    /** Bytes seen. */
    public long byteCount() {
        return byteCount;
    }

    /** The latest line as text. */
    public String latestLine() {
        return new String(latest, 0, latestLength, StandardCharsets.ISO_8859_1);
    }
}
