package handspan.instrument.line;

import java.util.Arrays;

/**
 * The latest of what a board says besides its numbers, most of it as it starts. What speaks of a failure stays until
 * something else does: it often names the fault, and more harmless lines follow it. Owned by one thread.
 */
public final class BoardRemark {
    private static final String[] FAILURES = {"fail", "error", "not found", "not detected", "cannot", "can't"};

    private final byte[] remark = new byte[LineSplitter.LONGEST];
    private int length;
    private boolean failure;

    /** The link is there again. */
    public void clear() {
        length = 0;
        failure = false;
    }

    /**
     * A line that is no reading, or of which that is not known yet: kept where it has no number, or tells of a failure.
     */
    public void offer(byte[] line, int lineLength) {
        if (!LineText.hasWord(line, lineLength) || BoardWords.saysNothing(line, lineLength)) {
            return;
        }
        boolean fails = tellsOfFailure(line, lineLength);
        if (fails || (!failure && !hasDigit(line, lineLength))) {
            System.arraycopy(line, 0, remark, 0, lineLength);
            length = lineLength;
            failure |= fails;
        }
    }

    private static boolean hasDigit(byte[] line, int lineLength) {
        for (int i = 0; i < lineLength; i++) {
            if (Ascii.isDigit(line[i])) {
                return true;
            }
        }
        return false;
    }

    private static boolean tellsOfFailure(byte[] line, int lineLength) {
        for (String word : FAILURES) {
            for (int from = 0; from + word.length() <= lineLength; from++) {
                if (Ascii.matches(line, from, from + word.length(), word)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Its bytes, without the line end; none where nothing was said. */
    public byte[] bytes() {
        return Arrays.copyOf(remark, length);
    }
}
