package handspan.number.units;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FiguresTest {
    private final Locale usual = Locale.getDefault();

    @AfterEach
    void restoreTheLocale() {
        Locale.setDefault(usual);
    }

    /** Two locales that write 3,14, one that groups by blanks, one with digits of its own. */
    @ParameterizedTest
    @ValueSource(strings = {"de-DE", "pt-BR", "fr-FR", "ar-EG-u-nu-arab", "en-US"})
    void numbersInWordsHaveADecimalPointInEveryLocale(String tag) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertEquals("2.15", Figures.text(2.146, 2));
        assertEquals("-1204.1", Figures.text(-1204.1, 1));
        assertEquals("200,244", Figures.count(200_244));
        assertEquals("4.5 %", Figures.percent(0.045));
    }

    @Test
    void sharesOfATenthAndMoreNeedNoDecimal() {
        assertEquals("9.9 %", Figures.percent(0.099));
        assertEquals("10 %", Figures.percent(0.1));
        assertEquals("100 %", Figures.percent(1));
        assertEquals("0.0 %", Figures.percent(0));
    }

    @Test
    void noDecimalsMeanNoPoint() {
        assertEquals("34", Figures.text(33.6, 0));
        assertEquals("1,000", Figures.count(1000));
        assertEquals("999", Figures.count(999));
    }
}
