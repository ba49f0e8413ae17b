package handspan.outside.take;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The rule stands in the Javadoc of LogHeader; each pair of rows here is a near miss of the other. */
class LogHeaderTest {
    /** Lines are parted by a bar. */
    @ParameterizedTest(name = "{0} header lines in {1}")
    @CsvSource(
            quoteCharacter = '`',
            delimiter = ';',
            value = {
                // the first lines of a real recording (TimeOfFlightCalibration, commit dd22d07, MIT) and labelled data
                "3; Fs,50.00|Logging time,3600|d|79.0|74.0|76.0",
                "0; Fs,50.00|Fs,51.00|Fs,49.50|Fs,50.00",
                // one labelled line, then bare numbers; the label again
                "1; Distance: 23 cm|24|25",
                "0; Distance: 23 cm|distance:  7 cm|Distance: 25 cm",
                // names of columns; names at each number
                "1; time, left, front|1, 156, 195|2, 195, 210",
                "0; left:156 front:195|left:195 front:210",
                // keys by letter; a letter alone
                "0; D:23|D:24|D:23",
                "1; D|23|24",
                // a banner before data with a unit; a word for no reading that comes again
                "1; sensor test|23 cm|24 cm",
                "0; out of range|23 cm|out of range|24 cm",
                // label and number on lines of their own
                "0; Distance:|23|Distance:|24",
                "1; Distance:|23|24|25",
                // a block of labels again and again; once before bare numbers
                "0; mid: 41.20|left side:18.05||mid: 40.90|left side:18.00|",
                "2; mid: 41.20|left side:18.05||12|13",
                // constant lines between the data
                "0; light:567,|Min:0,Max:1023|light:568,|Min:0,Max:1023",
                "1; Min:0,Max:1023|light:568,|light:567,|light:566,",
                // the letter of an exponent; a letter of its own
                "0; 1e-3|2.5E+02|3e1",
                "1; e-3|25|31",
                // in place of a number; a word that begins alike
                "0; nan|23.4|inf",
                "1; nano|23.4|23.5",
                "0; NaN,567|23.4,567|23.5,570",
                // ruled lines around a title; a ruled line later on
                "3; =====|Logger|=====|23|24",
                "0; 23|=====|24",
                // a clock has no letter, a date with T has one, and comes again
                "0; 12:03:11, 23.4|12:03:12, 23.5",
                "0; 2031-05-04T12:03:11Z,23|2031-05-04T12:03:12Z,24",
                // nothing but one round of labels: data; with one number after it: header
                "0; mid: 41.20|left side:18.05",
                "2; mid: 41.20|left side:18.05|7",
                // a blank line first; nothing but blank lines
                "2; |Fs,50|23|24",
                "0; |23|24",
                "0; ||"
            })
    void wordsThatComeOnceAreHeaderAndLabelsThatComeAgainAreData(int headerLines, String lines) {
        assertEquals(headerLines, LogHeader.length(List.of(lines.split("\\|", -1))));
    }

    @Test
    void atMostTenLinesAreHeader() {
        // a different word each, so that no shape comes again
        List<String> words =
                IntStream.range(0, 12).mapToObj("x"::repeat).skip(1).toList();
        List<String> numbers = List.of("1", "2");
        assertEquals(10, LogHeader.length(join(words.subList(0, 10), numbers)));
        assertEquals(10, LogHeader.length(join(words, numbers)));
        assertEquals(9, LogHeader.length(join(words.subList(0, 9), numbers)));
    }

    @Test
    void theHeadingOfAWideTableIsTheLastHeaderLineEvenBeforeRowsThatBeginWithWords() {
        String heading = "who,"
                + String.join(",", IntStream.range(0, 60).mapToObj(i -> "V" + i).toList());
        String numbers = ",1".repeat(60);
        assertEquals(
                2, LogHeader.length(List.of("Fs,500", heading, "palm" + numbers, "fist" + numbers, "two" + numbers)));
    }

    private static List<String> join(List<String> first, List<String> second) {
        return new ArrayList<>(Stream.concat(first.stream(), second.stream()).toList());
    }
}
