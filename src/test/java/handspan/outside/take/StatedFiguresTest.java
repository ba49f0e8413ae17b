package handspan.outside.take;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class StatedFiguresTest {
    private static final double ROUNDING_SHARE01 = 1e-12;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Fs,50.00|50",
                "fs = 55.6|55.6",
                "FS;50,5|50.5",
                "# Sample rate: 50 Hz|50",
                "Sampling frequency (kHz): 0.5|500",
                "\"rate\",\"20\"|20",
                "Rate 16.5 1/s,,|16.5",
                "Hz:100|100"
            })
    void aStatedRateIsRecognised(String line, double ratePerS) {
        StatedFigures stated = StatedFigures.of(List.of("Logger", line));
        assertEquals(ratePerS, stated.ratePerS().orElseThrow(), ROUNDING_SHARE01 * ratePerS);
        assertEquals(OptionalDouble.empty(), stated.seconds());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Logging time,3600|3600",
                "Duration: 60 min|3600",
                "Duration [h] = 1.5|5400",
                "seconds;12,5|12.5",
                "# duration: 1500 ms|1.5"
            })
    void aStatedDurationIsRecognisedInItsUnit(String line, double seconds) {
        StatedFigures stated = StatedFigures.of(List.of(line));
        assertEquals(seconds, stated.seconds().orElseThrow(), ROUNDING_SHARE01 * seconds);
        assertEquals(OptionalDouble.empty(), stated.ratePerS());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Baud rate: 9600",
                "Sampling interval: 20 ms",
                "rate: fast",
                "rate: 50 cm",
                "Fs,0",
                "Fs,50,60",
                "Fs,-50",
                "Duration: 3,600 s",
                "Duration: 1:00:00",
                "Duration: 2 days",
                "seconds,distance",
                "50 Hz",
                "d"
            })
    void whatOnlyLooksLikeAStatementIsPassedOver(String line) {
        assertEquals(
                new StatedFigures(OptionalDouble.empty(), OptionalDouble.empty()), StatedFigures.of(List.of(line)));
    }

    /** Header and count of a real recording (TimeOfFlightCalibration, commit dd22d07, MIT): 200244 / 3600 = 55.623. */
    @Test
    void theHeaderOfARealRecordingIsContradictedByItsLines() {
        StatedFigures stated = StatedFigures.of(List.of("Fs,50.00", "Logging time,3600", "d"));
        assertEquals(
                Optional.of("header says 50 a second, but 200,244 lines in the stated 3,600 s make 55.6 a second;"
                        + " --rate 55.6 is used"),
                stated.rateRemark(200_244, 55.6));
        assertEquals(
                Optional.of("header says 50 a second, but 200,244 lines in the stated 3,600 s make 55.6 a second;"
                        + " --rate 50 is used, --rate 55.6 would fit the stated time"),
                stated.rateRemark(200_244, 50));
    }

    @Test
    void whenAllAgreesNothingIsSaid() {
        StatedFigures both = StatedFigures.of(List.of("Fs,50.00", "Logging time,3600"));
        // 49.5 a second: a hundredth off, within what an uncalibrated clock explains
        assertEquals(Optional.empty(), both.rateRemark(178_200, 50));
        assertEquals(Optional.empty(), StatedFigures.of(List.of()).rateRemark(178_200, 77));
        assertEquals(Optional.empty(), both.rateRemark(0, 50));
    }

    @Test
    void aRateThatFitsNeitherHeaderNorLinesIsNamed() {
        StatedFigures both = StatedFigures.of(List.of("Fs,50.00", "Logging time,3600"));
        assertEquals(
                Optional.of("180,000 lines in the stated 3,600 s make 50 a second, but --rate 1250 is used,"
                        + " --rate 50 would fit the stated time"),
                both.rateRemark(180_000, 1250));
        assertEquals(
                Optional.of("header says 50 a second, but --rate 55.6 is used"),
                StatedFigures.of(List.of("Fs,50.00")).rateRemark(180_000, 55.6));
        assertEquals(Optional.empty(), StatedFigures.of(List.of("Fs,50.00")).rateRemark(180_000, 50));
        assertEquals(
                Optional.of("20 lines in the stated 12.5 s make 1.600 a second, but --rate 2 is used,"
                        + " --rate 1.600 would fit the stated time"),
                StatedFigures.of(List.of("seconds: 12.5")).rateRemark(20, 2));
    }

    @Test
    void oneLineMoreOrLessIsNoContradiction() {
        // 10 s at 1 a second hold 10 lines, or 11 with one at both ends: a tenth more, yet nothing is wrong
        StatedFigures stated = StatedFigures.of(List.of("Fs,1", "Duration,10"));
        assertEquals(Optional.empty(), stated.rateRemark(11, 1));
        // without a length there are no lines to count against: few lines excuse nothing
        assertEquals(
                Optional.of("header says 50 a second, but --rate 55.6 is used"),
                StatedFigures.of(List.of("Fs,50")).rateRemark(3, 55.6));
        assertEquals(
                Optional.of("header says 1 a second, but 12 lines in the stated 10 s make 1.200 a second;"
                        + " --rate 1 is used, --rate 1.200 would fit the stated time"),
                stated.rateRemark(12, 1));
    }
}
