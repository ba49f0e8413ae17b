package handspan.show.report;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Days in words that are read alike all over the world: 26 November 2026. */
final class ReportDate {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);
    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);
    private static final int DAY_CHARACTERS = 10;

    private ReportDate() {}

    /** A day. */
    static String of(LocalDate day) {
        return DAY.format(day);
    }

    /** The day of an ISO 8601 text; the text itself where it is none. */
    static String of(String written) {
        if (written.length() < DAY_CHARACTERS) {
            return written;
        }
        try {
            return of(LocalDate.parse(written.substring(0, DAY_CHARACTERS)));
        } catch (DateTimeException e) {
            return written;
        }
    }

    /** The day and, where it is told, the time of an ISO 8601 text, with what it counts from. */
    static String withTime(String written) {
        try {
            OffsetDateTime time = OffsetDateTime.parse(written);
            String zone = time.getOffset().equals(ZoneOffset.UTC)
                    ? "UTC"
                    : "UTC" + time.getOffset().getId();
            return of(time.toLocalDate()) + ", " + MINUTE.format(time) + " " + zone;
        } catch (DateTimeException e) {
            return of(written);
        }
    }
}
