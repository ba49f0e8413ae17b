package handspan.instrument.line;

/** The text of a line that no number has followed yet: a label, once one does. Owned by one {@link LineTokens}. */
final class OpenLabel {
    private int from;
    private int to;
    private int colonAt;
    private int textFrom;
    private boolean stroke;

    OpenLabel() {
        drop();
    }

    void drop() {
        from = -1;
        to = -1;
        colonAt = -1;
        textFrom = -1;
        stroke = false;
    }

    /** A word, or digits that belong to it. */
    void extend(int wordFrom, int wordTo) {
        if (from < 0) {
            from = wordFrom;
        } else if (colonAt >= 0 && textFrom < 0) {
            textFrom = wordFrom;
        }
        to = wordTo;
    }

    /** {@code :} or {@code =}. */
    void colon() {
        if (from >= 0 && colonAt < 0) {
            colonAt = to;
        }
    }

    /** A stroke, as boards print it in place of a number. */
    void stroke() {
        stroke |= colonAt >= 0;
    }

    boolean isOpen() {
        return from >= 0;
    }

    boolean hasColon() {
        return colonAt >= 0;
    }

    boolean hasStroke() {
        return stroke;
    }

    int from() {
        return from;
    }

    /** End of the last word. */
    int to() {
        return to;
    }

    /** End of the last word before the colon; -1 without one. */
    int colonAt() {
        return colonAt;
    }

    /** First word after the colon; -1 without one. */
    int textFrom() {
        return textFrom;
    }
}
