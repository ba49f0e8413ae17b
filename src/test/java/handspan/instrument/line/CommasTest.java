package handspan.instrument.line;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A comma between two digits is a decimal point in half of Europe and a separator elsewhere: it is not guessed. */
class CommasTest {
    private static Learning learn(CommaRule rule, String... lines) {
        ShapeLearner learner = new ShapeLearner(rule);
        int i = 0;
        while (!Board.offer(learner, lines[i % lines.length])) {
            i++;
        }
        return learner.learn();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "23,4 24,1 19,9",
                "23,47 24,10 19,93",
                "d23,4 d24,1 d9,9",
                "<23,45> <24,11> <9,87>",
                "1,041 1,120 1,093"
            })
    void whatCanBeReadInTwoWaysIsAsked(String lines) {
        Learning.Ambiguous either =
                assertInstanceOf(Learning.Ambiguous.class, learn(CommaRule.ASK, lines.split(" ", -1)));
        String example = lines.split(" ", -1)[1].replaceAll("[^0-9,]", "");
        assertEquals(
                "'" + example + "' can be one number with a decimal comma, or two numbers: say --comma decimal, or"
                        + " --comma parts",
                either.question());
        assertEquals(2, either.parts().slots().size());
        assertEquals(1, either.decimal().slots().size());
        assertEquals(either.decimal(), Board.shape(learn(CommaRule.DECIMAL, lines.split(" ", -1))));
        assertEquals(either.parts(), Board.shape(learn(CommaRule.PARTS, lines.split(" ", -1))));
    }

    /** Lines that tell by themselves: with bars between them. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "234,567|241,570; 2 numbers a line parted by commas: 1, 2",
                "23,4|23,10|24,5; 2 numbers a line parted by commas: 1, 2",
                "23.4,5|24.1,6; 2 numbers a line parted by commas: 1, 2",
                "1:23,2:4|1:24,2:5; 2 numbers with labels parted by commas: 1, 2",
                "0041,0019|0120,0120; 2 numbers a line parted by commas: 1, 2",
                "23,-4|24,-5; 2 numbers a line parted by commas: 1, 2",
                "23, 4|24, 5; 2 numbers a line parted by commas: 1, 2",
                "1,2,3|2,3,4; 3 numbers a line parted by commas: 1, 2, 3",
                "d:23,l:4|d:24,l:5; 2 numbers with labels parted by commas: d, l",
                "23,04|24,10|24,93; 1 number a line, decimal comma: 1",
                "23,4 56,7|24,1 57,8; 2 numbers a line parted by blanks, decimal comma: 1, 2"
            })
    void linesThatTellByThemselvesAreNotAsked(String lines, String words) {
        assertEquals(
                words, Board.shape(learn(CommaRule.ASK, lines.split("\\|", -1))).words());
    }

    @Test
    void anAnswerDoesNotOverruleWhatLinesTell() {
        assertEquals(
                "2 numbers with labels parted by commas: d, l",
                Board.shape(learn(CommaRule.DECIMAL, "d:23,l:4", "d:24,l:5")).words());
        assertEquals(CommaRule.DECIMAL, CommaRule.parse("Decimal"));
        assertThrows(IllegalArgumentException.class, () -> CommaRule.parse("point"));
        assertEquals(3, List.of(CommaRule.values()).size());
    }
}
