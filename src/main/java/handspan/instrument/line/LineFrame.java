package handspan.instrument.line;

/** The first and the last character of a line that are not blank. */
final class LineFrame {
    private LineFrame() {}

    static char first(byte[] line, int length) {
        for (int i = 0; i < length; i++) {
            if (!Ascii.isBlank(line[i])) {
                return (char) (line[i] & 0xff);
            }
        }
        return '\0';
    }

    static char last(byte[] line, int length) {
        for (int i = length - 1; i >= 0; i--) {
            if (!Ascii.isBlank(line[i])) {
                return (char) (line[i] & 0xff);
            }
        }
        return '\0';
    }

    /** Whether a line has what lines of a layout begin and end with. */
    static boolean isWhole(LineShape.Layout layout, byte[] line, int length) {
        return (layout.opening() == 0 || first(line, length) == layout.opening())
                && (layout.closing() == 0 || last(line, length) == layout.closing());
    }
}
