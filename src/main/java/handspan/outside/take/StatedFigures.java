package handspan.outside.take;

import handspan.number.units.Figures;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a log's header says about its own rate and length. A header is a claim: compare it with the number of lines by
 * {@link #rateRemark}.
 *
 * @param ratePerS lines per second, above 0
 * @param seconds how long the log runs, s, above 0
 */
record StatedFigures(OptionalDouble ratePerS, OptionalDouble seconds) {
    /** Two rates closer than this share are the same: a board's clock without a crystal is off by a percent or two. */
    static final double SAME_RATE_SHARE01 = 0.02;

    private static final Set<String> RATE_NAMES = Set.of(
            "fs",
            "hz",
            "rate",
            "samplerate",
            "samplingrate",
            "samplefrequency",
            "samplingfrequency",
            "linespersecond",
            "readingspersecond",
            "samplespersecond");

    private static final Set<String> TIME_NAMES = Set.of("duration", "loggingtime", "recordingtime", "seconds");

    /** Longer lines state nothing; a table's heading may have a million characters. */
    private static final int LONGEST_STATEMENT = 200;

    /** Name, unit in brackets, separator, number, unit: {@code # Logging time (min): 60} or {@code fs = 50 Hz}. */
    private static final Pattern STATEMENT =
            Pattern.compile("[^\\p{L}0-9]*([\\p{L} _]+?)\\s*(?:[(\\[]([^)\\]]*)[)\\]])?"
                    + "\\s*([,;:=\\t ])\\s*([0-9]+(?:[.,][0-9]+)?)\\s*([\\p{L}0-9/ ]*)[,;\\s]*");

    private static final Pattern NOT_LETTERS = Pattern.compile("[^\\p{L}]");

    /** Reads header lines; a statement that is not plain (unknown unit, doubtful comma) is passed over. */
    static StatedFigures of(List<String> headerLines) {
        OptionalDouble rate = OptionalDouble.empty();
        OptionalDouble seconds = OptionalDouble.empty();
        for (String line : headerLines) {
            if (line.length() > LONGEST_STATEMENT) {
                continue;
            }
            Matcher statement = STATEMENT.matcher(line.replace("\"", ""));
            if (!statement.matches()) {
                continue;
            }
            String name = NOT_LETTERS.matcher(statement.group(1)).replaceAll("").toLowerCase(Locale.ROOT);
            if (rate.isEmpty() && RATE_NAMES.contains(name)) {
                rate = value(statement, StatedFigures::perSecond);
            } else if (seconds.isEmpty() && TIME_NAMES.contains(name)) {
                seconds = value(statement, StatedFigures::inSeconds);
            }
        }
        return new StatedFigures(rate, seconds);
    }

    private static OptionalDouble value(Matcher statement, ToDoubleFunction<String> unitFactor) {
        String inBrackets = statement.group(2) == null ? "" : statement.group(2);
        String unit = (inBrackets + statement.group(5)).replace(" ", "").toLowerCase(Locale.ROOT);
        String number = statement.group(4);
        // 3,600 may be three thousand six hundred or three point six; after a comma as separator any comma is doubtful
        boolean doubtful = number.matches(".*,[0-9]{3}")
                || (number.contains(",") && statement.group(3).equals(","));
        if (doubtful) {
            return OptionalDouble.empty();
        }
        double value = unitFactor.applyAsDouble(unit) * Double.parseDouble(number.replace(',', '.'));
        return value > 0 && Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
    }

    /** How many per second one of this unit is; 0 for an unknown unit. */
    private static double perSecond(String unit) {
        return switch (unit) {
            case "", "hz", "1/s", "/s", "persecond", "samples/s", "lines/s", "readings/s" -> 1;
            case "khz" -> 1000;
            default -> 0;
        };
    }

    /** How many seconds one of this unit is; 0 for an unknown unit. */
    private static double inSeconds(String unit) {
        return switch (unit) {
            case "", "s", "sec", "seconds" -> 1;
            case "ms" -> 0.001;
            case "min", "minutes" -> 60;
            case "h", "hours" -> 3600;
            default -> 0;
        };
    }

    /**
     * Says where the header's rate, its length with the lines counted, and the rate in use contradict each other.
     *
     * @param lineCount lines of data in the whole log
     * @param givenRatePerS the rate by which the lines are dated
     * @return empty when all that is known agrees within 2 % (counted lines also within one line)
     */
    Optional<String> rateRemark(long lineCount, double givenRatePerS) {
        if (lineCount < 1) {
            return Optional.empty();
        }
        String inUse = "--rate " + rate(givenRatePerS) + " is used";
        if (seconds.isEmpty()) {
            return ratePerS.isPresent() && !same(ratePerS.getAsDouble(), givenRatePerS, SAME_RATE_SHARE01)
                    ? Optional.of("header says " + rate(ratePerS.getAsDouble()) + " a second, but " + inUse)
                    : Optional.empty();
        }
        double counted = lineCount / seconds.getAsDouble();
        // one line more or less at the ends is no contradiction; the last term only covers rounding
        double share01 = Math.max(SAME_RATE_SHARE01, 1.0 / lineCount) + 1e-9;
        String counting = Figures.count(lineCount) + " lines in the stated " + seconds(seconds.getAsDouble())
                + " s make " + rate(counted) + " a second";
        boolean givenFits = same(counted, givenRatePerS, share01);
        String advice = givenFits ? inUse : inUse + ", --rate " + rate(counted) + " would fit the stated time";
        if (ratePerS.isPresent() && !same(ratePerS.getAsDouble(), counted, share01)) {
            return Optional.of(
                    "header says " + rate(ratePerS.getAsDouble()) + " a second, but " + counting + "; " + advice);
        }
        return givenFits ? Optional.empty() : Optional.of(counting + ", but " + advice);
    }

    private static boolean same(double a, double b, double share01) {
        return Math.abs(a - b) <= share01 * Math.max(a, b);
    }

    /** A rate as it may be typed again: no thousands mark, no needless decimals. */
    static String rate(double ratePerS) {
        return ratePerS == Math.rint(ratePerS) && ratePerS < Long.MAX_VALUE
                ? Long.toString((long) ratePerS)
                : Figures.text(ratePerS, ratePerS < 10 ? 3 : 1);
    }

    private static String seconds(double seconds) {
        return seconds == Math.rint(seconds) ? Figures.count(Math.round(seconds)) : Figures.text(seconds, 1);
    }
}
