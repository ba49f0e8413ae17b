package handspan.instrument.line;

import java.util.List;

/**
 * What the commas of lines tell of themselves. Between two digits a comma may be a decimal point or may part two
 * numbers. It parts them where the digits after it are more than two, or now more and now fewer, or begin with a sign;
 * a decimal point has a zero after it that no whole number begins with, or stands in several numbers that blanks part.
 * Three digits with such a zero before them may also belong to a thousand: nobody knows.
 */
record Commas(boolean between, boolean decimal, boolean parting, String example) {
    /** Whether nobody but the player knows. */
    boolean isAmbiguous() {
        return between && !decimal && !parting;
    }

    /** Looks at lines without any other separator than blanks. */
    static Commas in(List<byte[]> lines) {
        Tally tally = new Tally();
        for (byte[] line : lines) {
            tally.add(line);
        }
        return new Commas(
                tally.commas > 0 && !tally.apart,
                tally.width <= 2 && (tally.zeroFirst || (tally.several && !tally.widthsDiffer)),
                tally.widthsDiffer
                        || tally.twoInOne
                        || tally.padded
                        || tally.keyed
                        || (tally.width > 2 && !tally.zeroFirst),
                tally.example);
    }

    private static final class Tally {
        private int commas;
        private int width;
        private boolean apart;
        private boolean widthsDiffer;
        private boolean zeroFirst;
        private boolean padded;
        private boolean keyed;
        private boolean several;
        private boolean twoInOne;
        private String example = "";

        void add(byte[] line) {
            int inLine = 0;
            int numberBefore = -1;
            for (int i = 0; i < line.length; i++) {
                if (line[i] != ',') {
                    continue;
                }
                boolean digits =
                        i > 0 && i + 1 < line.length && Ascii.isDigit(line[i - 1]) && Ascii.isDigit(line[i + 1]);
                if (!digits) {
                    apart = true;
                    continue;
                }
                int end = i + 1;
                while (end < line.length && Ascii.isDigit(line[end])) {
                    end++;
                }
                boolean point = (end < line.length && line[end] == '.') || hasPointBefore(line, i);
                int digitsAfter = end - i - 1;
                widthsDiffer |= point || (commas > 0 && digitsAfter != width);
                width = digitsAfter;
                zeroFirst |= digitsAfter > 1 && line[i + 1] == '0';
                padded |= isPadded(line, i);
                keyed |= isKey(line, end);
                twoInOne |= numberBefore == i;
                numberBefore = end;
                commas++;
                inLine++;
                example = text(line, i, end);
            }
            several |= inLine > 1;
        }

        /** A number with a decimal point ends at this comma. */
        private static boolean hasPointBefore(byte[] line, int comma) {
            int at = comma - 1;
            while (at > 0 && Ascii.isDigit(line[at])) {
                at--;
            }
            return line[at] == '.';
        }

        /** The number before a comma has a zero in front that no number needs: so may the one behind it. */
        private static boolean isPadded(byte[] line, int comma) {
            int from = comma;
            while (from > 0 && Ascii.isDigit(line[from - 1])) {
                from--;
            }
            return comma - from > 1 && line[from] == '0';
        }

        /** The number behind a comma is the key of the next. */
        private static boolean isKey(byte[] line, int end) {
            int at = end;
            while (at < line.length && Ascii.isBlank(line[at])) {
                at++;
            }
            return at < line.length && (line[at] == ':' || line[at] == '=');
        }

        private static String text(byte[] line, int comma, int end) {
            int from = comma;
            while (from > 0 && (Ascii.isDigit(line[from - 1]) || line[from - 1] == '-')) {
                from--;
            }
            return new String(line, from, end - from, java.nio.charset.StandardCharsets.ISO_8859_1);
        }
    }
}
