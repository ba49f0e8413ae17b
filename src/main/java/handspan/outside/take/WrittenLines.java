package handspan.outside.take;

/** Counts the whole lines among the bytes of a take; header and marks, which begin with #, are none. */
final class WrittenLines {
    private boolean rowBegins = true;
    private boolean rowIsLine;
    private long count;

    /** More bytes were written. */
    void add(byte[] bytes, int length) {
        for (int i = 0; i < length; i++) {
            if (rowBegins) {
                rowIsLine = bytes[i] != '#';
            }
            rowBegins = bytes[i] == '\n';
            if (rowBegins && rowIsLine) {
                count++;
            }
        }
    }

    long count() {
        return count;
    }
}
