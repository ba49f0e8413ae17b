package handspan.instrument.sensor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class InfraredPartTest {
    /** A figure of a data sheet can be read to this. */
    private static final double READING_VOLTS = 0.02;

    private static final double DISTANCE_SHARE = 0.03;

    /**
     * Data sheet E4-A00201EN (part GP2Y0A21YK0F), Fig. 2, output over distance, vertices of the drawn line: the law was
     * fitted to these.
     */
    @ParameterizedTest
    @CsvSource({
        "79.9,  2.742",
        "100.8, 2.304",
        "152.1, 1.644",
        "201.1, 1.306",
        "251.5, 1.079",
        "301.9, 0.925",
        "401.7, 0.735",
        "501.5, 0.610",
        "601.3, 0.507",
        "701.1, 0.439",
        "800.5, 0.398"
    })
    void theLongRangeLawRunsAlongTheDrawnCurve(double mm, double volts) {
        InfraredLaw law = InfraredPart.TO_80_CM.law();
        assertEquals(volts, law.volts(mm), READING_VOLTS);
        assertEquals(mm, law.mm(volts), DISTANCE_SHARE * mm);
    }

    /**
     * The same data sheet, output over inverse distance, marked points: not used for the fit. The two drawings differ
     * by up to 0.02 V at 15 cm, so a reading may be off twice.
     */
    @ParameterizedTest
    @CsvSource({"100, 2.327", "150, 1.641", "250, 1.080", "400, 0.733", "800, 0.396"})
    void theLongRangeLawMeetsTheMarkedPoints(double mm, double volts) {
        InfraredLaw law = InfraredPart.TO_80_CM.law();
        assertEquals(volts, law.volts(mm), 2 * READING_VOLTS);
        assertEquals(mm, law.mm(volts), DISTANCE_SHARE * mm);
    }

    /**
     * Data sheet OP13008EN (part GP2Y0A41SK0F), output over distance, read by eye: a law of three parameters misses the
     * 0.02 V of the reading at 50 mm by another 0.01 V.
     */
    @ParameterizedTest
    @CsvSource({
        "40,  2.722",
        "50,  2.339",
        "70,  1.766",
        "80,  1.562",
        "100, 1.267",
        "120, 1.063",
        "160, 0.816",
        "200, 0.664",
        "250, 0.527",
        "350, 0.371"
    })
    void theShortRangeLawRunsAlongTheDrawnCurve(double mm, double volts) {
        InfraredLaw law = InfraredPart.TO_30_CM.law();
        assertEquals(volts, law.volts(mm), 0.03);
        assertEquals(mm, law.mm(volts), DISTANCE_SHARE * mm);
    }

    /**
     * Published straight-line forms for other specimens: V = 20.99 / d + 0.19, d in cm, for the 10-80 cm part; d = 2076
     * / (S - 11) cm with S = 1000 V / 5 for the 4-30 cm part. The data sheets' own points lie up to 18 % from them.
     */
    @Test
    void otherSpecimensFollowTheLawRoughly() {
        for (double cm : new double[] {10, 20, 40}) {
            double volts = 20.99 / cm + 0.19;
            assertEquals(10 * cm, InfraredPart.TO_80_CM.law().mm(volts), 0.2 * 10 * cm);
        }
        for (double s : new double[] {80, 200, 530}) {
            double mm = 10 * 2076 / (s - 11);
            assertEquals(mm, InfraredPart.TO_30_CM.law().mm(5 * s / 1000), 0.2 * mm);
        }
    }

    /** Points of the same figures about the peak: output at the fold-over, and one point on either side. */
    @ParameterizedTest
    @CsvSource({"TO_80_CM, 59.6, 3.13,  48.9, 3.090, 69.3, 2.978", "TO_30_CM, 30,   3.039, 25,   2.737, 40,   2.722"})
    void nearerThanTheFoldTheOutputFallsAgain(
            InfraredPart part,
            double foldMm,
            double foldVolts,
            double in,
            double inVolts,
            double out,
            double outVolts) {
        assertEquals(foldMm, part.foldMm(), 1);
        assertEquals(foldVolts, part.foldVolts(), READING_VOLTS);
        assertTrue(in < part.foldMm() && part.foldMm() < out);
        assertTrue(inVolts < part.foldVolts() && outVolts < part.foldVolts());
        // the law knows nothing of it: it takes the near point for one beyond the fold
        assertTrue(part.law().mm(inVolts) > part.foldMm());
        assertTrue(part.lawFromMm() > part.foldMm() && part.lawFromMm() <= part.nearMm());
    }

    /** Table of both data sheets: 0.40 V at the far end; 1.90 V and 2.25 V more at the near end, typically. */
    @ParameterizedTest
    @CsvSource({"TO_80_CM, 100, 800, 1.90, 10-80cm", "TO_30_CM, 40, 300, 2.25, 4-30cm"})
    void theRangeIsThatOfTheDataSheet(InfraredPart part, double near, double far, double differenceVolts, String word) {
        assertEquals(word, part.word());
        assertEquals(near, part.nearMm());
        assertEquals(far, part.farMm());
        assertEquals(0.40, part.law().volts(far), 0.05);
        assertEquals(differenceVolts, part.law().volts(near) - part.law().volts(far), 0.08);
    }
}
