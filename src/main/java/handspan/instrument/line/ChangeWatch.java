package handspan.instrument.line;

import java.util.List;

/**
 * Notices that a board's program has changed: line after line does not fit, and all of these fit another shape. Owned
 * by one thread.
 */
public final class ChangeWatch {
    /** Of the lines that did not fit, so many must fit the new shape. */
    private static final double FIT01 = 0.8;

    private final CommaRule comma;
    private ShapeLearner learner;
    private int fitting;

    /**
     * A watch.
     *
     * @param comma what commas between digits stand for where lines don't tell
     */
    public ChangeWatch(CommaRule comma) {
        this.comma = comma;
        this.learner = new ShapeLearner(comma);
    }

    /** A line fitted. */
    public void onFit() {
        fitting++;
        if (fitting > ShapeLearner.LINES && !learner.lines().isEmpty()) {
            restart();
        }
    }

    /**
     * A line did not fit.
     *
     * @param known the shape it did not fit
     * @return what the latest lines have in common, once that is clear; nothing while it is not
     */
    public Learning onMisfit(byte[] line, int length, LineShape known) {
        if (learner.lines().isEmpty()) {
            fitting = 0;
        }
        if (!learner.offer(line, length)) {
            return new Learning.Nothing();
        }
        List<byte[]> lines = learner.lines();
        Learning learning = decided(learner.learn(), known);
        boolean mostly = fitting < ShapeLearner.LINES / 2;
        restart();
        boolean fits = learning instanceof Learning.Learned learned
                ? fits(learned.shape(), lines)
                : learning instanceof Learning.Ambiguous either
                        && fits(either.parts(), lines)
                        && fits(either.decimal(), lines);
        return mostly && fits ? learning : new Learning.Nothing();
    }

    /** Where lines can be read in two ways, what is known of the board's commas so far decides. */
    private static Learning decided(Learning learning, LineShape known) {
        if (learning instanceof Learning.Ambiguous either && (known.decimalComma() || known.separator() == ',')) {
            return new Learning.Learned(known.decimalComma() ? either.decimal() : either.parts());
        }
        return learning;
    }

    private static boolean fits(LineShape shape, List<byte[]> lines) {
        LineReader reader = new LineReader(shape, new Rejections());
        int fit = 0;
        for (byte[] line : lines) {
            reader.read(line, line.length, 0);
            fit += reader.rejectedLast() ? 0 : 1;
        }
        return fit >= FIT01 * lines.size();
    }

    private void restart() {
        learner = new ShapeLearner(comma);
        fitting = 0;
    }
}
