package handspan.show.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Expected pages are written out by hand. */
class PlainPageTest {
    @Test
    void headingsParagraphsPointsAndCommandsAreTextWithoutMarks() {
        String page = """
                # On a **page**

                Words that go on
                and on, *with* `--option` and `two words` and `t` and `'*' or '*'`.

                ## Below

                - a point that is longer than one
                  line holds
                - another

                1. first

                ```
                handspan play /dev/ttyACM0 --room kitchen

                  left as it is
                ```
                """;
        String expected = """
                On a page
                =========

                Words that go on and on, with
                --option and 'two words' and
                't' and "'*' or '*'".

                Below
                -----

                - a point that is longer than
                  one line holds
                - another
                1. first

                    handspan play /dev/ttyACM0 --room kitchen

                      left as it is
                """;
        assertEquals(expected, PlainPage.of(page).text(30));
    }

    private static final String TABLE = """
            | what | how much |
            |---|---|
            | `a\\|b` | one two three four |
            | `c d` | |
            """;

    @Test
    void aTableStandsInColumns() {
        String expected = """
                what  how much
                ----  ------------------
                a|b   one two three four
                c d
                """;
        assertEquals(expected, PlainPage.of(TABLE).text(80));
    }

    @Test
    void aTableTooWideBreaksItsWidestColumn() {
        String expected = """
                what  how much
                ----  --------------
                a|b   one two three
                      four
                c d
                """;
        assertEquals(expected, PlainPage.of(TABLE).text(20));
    }

    @Test
    void aTableWhoseWordsAreTooWideBecomesAList() {
        String page = """
                | address | carries |
                |---|---|
                | /NAME/pitch | frequency |
                | /NAME/a-long-address | x |
                """;
        String expected = """
                address: /NAME/pitch
                carries: frequency

                address:
                /NAME/a-long-address
                carries: x
                """;
        assertEquals(expected, PlainPage.of(page).text(20));
    }

    @Test
    void rowsOfATableHaveAsManyCellsAsItsHeading() {
        IllegalArgumentException refused = assertThrows(
                IllegalArgumentException.class, () -> PlainPage.of("| a | b |\n|---|---|\n| 1 | 2 | 3 |\n"));
        assertTrue(String.valueOf(refused.getMessage()).contains("3 cells"), refused::toString);
    }

    /** Two of them from Levenshtein's distance as it is usually taught: kitten to sitting takes 3. */
    @Test
    void wordsMostLikeAWrongOneAreFound() {
        assertEquals(3, Handbook.distance("kitten", "sitting"));
        assertEquals(0, Handbook.distance("zone", "zone"));
        assertEquals(4, Handbook.distance("", "zone"));
        assertEquals(List.of("faults"), Handbook.nearest("fautls", List.of("files", "faults", "words")));
        assertEquals(List.of("sensors"), Handbook.nearest("Sensor", List.of("osc", "sensors", "commands")));
        assertEquals(List.of(), Handbook.nearest("xylophone", List.of("osc", "sensors", "commands")));
    }
}
