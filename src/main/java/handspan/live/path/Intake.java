package handspan.live.path;

import handspan.instrument.line.BoardRemark;
import handspan.instrument.line.ChangeWatch;
import handspan.instrument.line.CommaRule;
import handspan.instrument.line.Learning;
import handspan.instrument.line.LineReader;
import handspan.instrument.line.LineShape;
import handspan.instrument.line.LineSplitter;
import handspan.instrument.line.LineText;
import handspan.instrument.line.Reading;
import handspan.instrument.line.Rejection;
import handspan.instrument.line.Rejections;
import handspan.instrument.line.ShapeLearner;
import handspan.instrument.line.TextMeter;
import handspan.number.units.Nanos;
import java.util.List;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The head of the path, shared by all that an instrument can be used for: bytes to lines to readings. Learns the line
 * shape from the first lines unless it is known, and loses none of them while it learns; learns it anew when the
 * board's program changes. Owned by the path thread.
 */
public final class Intake {
    /** Readings dropped after each connect: sensors print wrong values while they settle. */
    public static final int SETTLING_READINGS = 5;

    /** Commands to a terminal (ECMA-48, control sequences). */
    private static final Pattern TERMINAL = Pattern.compile("\u001b\\[[0-?]*[ -/]*[@-~]");

    /** Told of what the lines turn out to be. */
    public interface Shapes {
        /** A shape has been learned, the first or another one. */
        void learned(LineShape shape);

        /** The lines can be read in two ways. */
        void ambiguous(Learning.Ambiguous either);

        /** A line fits the learned shape. */
        default void fits(byte[] line, int length) {}

        /** A line does not fit the learned shape. */
        default void misfits(byte[] line, int length) {}
    }

    private final LineSplitter splitter = new LineSplitter();
    private final Rejections rejections = new Rejections();
    private final LineDates dates = new LineDates();
    private final TextMeter meter = new TextMeter();
    private final ChangeWatch change;
    private final CommaRule comma;
    private final LineTap tap;
    private final Consumer<Reading> readings;
    private final Shapes shapes;
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
    private ShapeLearner learner;
    private final long[] learnTimes = new long[ShapeLearner.LINES];
    private final long[] learnDates = new long[ShapeLearner.LINES];
    private int learnCount;
    private int settling = SETTLING_READINGS;
    private long nowNanos;
    private long lineCount;
    private long byteCount;
    private final byte[] latest = new byte[LineSplitter.LONGEST];
    private int latestLength;
    private final BoardRemark remark = new BoardRemark();

    /**
     * An intake.
     *
     * @param known the line shape where it is remembered; null to learn it
     * @param comma what a comma between digits stands for where lines don't tell
     * @param tap sees each line
     * @param readings takes each reading
     * @param shapes told what has been learned
     */
    public Intake(@Nullable LineShape known, CommaRule comma, LineTap tap, Consumer<Reading> readings, Shapes shapes) {
        this.comma = comma;
        this.tap = tap;
        this.readings = readings;
        this.shapes = shapes;
        this.learner = new ShapeLearner(comma);
        this.change = new ChangeWatch(comma);
        this.reader = known == null ? null : new LineReader(known, rejections);
    }

    /** An intake that takes lines which can be read in two ways for none. */
    public Intake(@Nullable LineShape known, LineTap tap, Consumer<Reading> readings, Consumer<LineShape> learned) {
        this(known, CommaRule.ASK, tap, readings, new Shapes() {
            @Override
            public void learned(LineShape shape) {
                learned.accept(shape);
            }

            @Override
            public void ambiguous(Learning.Ambiguous either) {}
        });
    }

    /** The link is there, or there again: a half line is forgotten, the next readings settle. */
    public void onConnected() {
        splitter.restart();
        dates.restart();
        settling = SETTLING_READINGS;
        remark.clear();
    }

    /** Takes bytes as they came. */
    public void onBytes(byte[] chunk, int count, long timeNanos) {
        nowNanos = timeNanos;
        byteCount += count;
        meter.accept(chunk, count, timeNanos);
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
        // what is said before the first numbers is shown at once: nothing may follow it
        remark.offer(bytes, length);
        learnDates[learnCount] = evenNanos;
        learnTimes[learnCount++] = nowNanos;
        boolean enough = learner.offer(bytes, length);
        if (enough || nowNanos - learnTimes[0] > 2 * Nanos.PER_SECOND) {
            learn();
        }
    }

    private void learn() {
        List<byte[]> seen = learner.lines();
        Learning learning = learner.learn();
        if (learning instanceof Learning.Learned learned) {
            LineReader made = new LineReader(learned.shape(), rejections);
            reader = made;
            shapes.learned(learned.shape());
            for (int i = 0; i < seen.size(); i++) {
                read(made, seen.get(i), seen.get(i).length, learnTimes[i], learnDates[i]);
            }
        } else if (learning instanceof Learning.Ambiguous either) {
            shapes.ambiguous(either);
        } else {
            seen.forEach(line -> rejections.count(learner.reason(line)));
        }
        learner = new ShapeLearner(comma);
        learnCount = 0;
    }

    private void read(LineReader known, byte[] bytes, int length, long timeNanos, long evenNanos) {
        Reading raw = known.read(bytes, length, timeNanos);
        if (known.rejectedLast()) {
            shapes.misfits(bytes, length);
        }
        if (known.lacksNumber()) {
            if (known.isNews()) {
                remark.offer(bytes, length);
            }
        } else if (known.rejectedLast()) {
            remark.offer(bytes, length);
            Learning other = change.onMisfit(bytes, length, known.shape());
            if (other instanceof Learning.Learned learned) {
                reader = new LineReader(learned.shape(), rejections);
                dates.restart();
                shapes.learned(learned.shape());
            } else if (other instanceof Learning.Ambiguous either) {
                shapes.ambiguous(either);
            }
        } else {
            shapes.fits(bytes, length);
            change.onFit();
        }
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

    /** Share of the bytes of the last second that are no text. */
    public double garbled01() {
        return meter.garbled01(nowNanos);
    }

    /** What lines say as text. */
    public LineNews news() {
        return new LineNews(
                text(latest, latestLength),
                text(remark.bytes(), remark.bytes().length),
                garbled01(),
                meter.sinceLineEnd());
    }

    /** Printable characters only: a terminal that shows it must not obey it. */
    private static String text(byte[] bytes, int length) {
        String all = TERMINAL.matcher(LineText.of(bytes, 0, length)).replaceAll("");
        StringBuilder shown = new StringBuilder(all.length());
        for (int i = 0; i < all.length(); i++) {
            char c = all.charAt(i);
            shown.append(Character.isISOControl(c) ? ' ' : c);
        }
        return shown.toString();
    }
}
