package handspan.instrument.sensor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class InfraredLawTest {
    private static final double EXACT = 1e-9;

    /** By hand: 300 / (100 + 50) = 2 and so on. */
    private static final InfraredLaw ROUND = new InfraredLaw(0, 300, 50);

    @ParameterizedTest
    @CsvSource({"100, 2", "250, 1", "350, 0.75", "550, 0.5"})
    void theOutputIsTheReciprocalOfTheShiftedDistance(double mm, double volts) {
        assertEquals(volts, ROUND.volts(mm), EXACT);
        assertEquals(mm, ROUND.mm(volts), EXACT);
        assertEquals(volts + 0.1, new InfraredLaw(0.1, 300, 50).volts(mm), EXACT);
    }

    @Test
    void theOutputFallsAllAlong() {
        for (InfraredPart part : InfraredPart.values()) {
            for (double mm = part.foldMm(); mm < 2 * part.farMm(); mm++) {
                assertTrue(part.law().volts(mm + 1) < part.law().volts(mm), part.word() + " at " + mm);
            }
        }
    }

    @Test
    void aVoltageAtOrUnderTheLimitIsInfinitelyFar() {
        InfraredLaw law = new InfraredLaw(0.1, 300, 50);
        assertEquals(Double.POSITIVE_INFINITY, law.mm(0.1));
        assertEquals(Double.POSITIVE_INFINITY, law.mm(-3));
        assertEquals(3_000_000 - 50, law.mm(0.1001), 1);
    }

    /** By hand: b (1/1 - 1/2) = 150 mm makes b = 300 V mm, and 300 / 2 - 100 makes k = 50 mm. */
    @Test
    void twoPointsSettleWhatIsLeftOfTheLaw() {
        InfraredLaw law = InfraredLaw.throughEnds(0, 2, 100, 1, 250);
        assertEquals(300, law.bVoltMm(), EXACT);
        assertEquals(50, law.kMm(), EXACT);
        InfraredLaw raised = InfraredLaw.throughEnds(0.2, 2, 100, 1, 250);
        assertEquals(2, raised.volts(100), EXACT);
        assertEquals(1, raised.volts(250), EXACT);
        assertEquals(0.2, raised.aVolts());
    }

    @Test
    void theShareOfTheWayDependsOnlyOnWhereTheOutputEnds() {
        InfraredLaw truth = new InfraredLaw(0.06, 283, 25.6);
        InfraredLaw blind = InfraredLaw.throughEnds(0.06, truth.volts(100), 0, truth.volts(400), 1);
        InfraredLaw wrong = InfraredLaw.throughEnds(0.16, truth.volts(100), 0, truth.volts(400), 1);
        for (double mm = 100; mm <= 400; mm += 50) {
            assertEquals((mm - 100) / 300, blind.mm(truth.volts(mm)), EXACT);
        }
        // by hand: V = 283/275.6 + 0.06 = 1.0869 V at 250 mm, 2.3132 at 100, 0.7250 at 400;
        // (1/0.9269 - 1/2.1532) / (1/0.5650 - 1/2.1532) = 0.6145 / 1.3055
        assertEquals(0.4707, wrong.mm(truth.volts(250)), 1e-4);
    }

    /** By hand: (250 + 50)^2 / 300 = 300 mm to the volt, so that a ten-bit count of 4.89 mV is 1.47 mm there. */
    @Test
    void aVoltIsMoreMillimetresFartherOut() {
        assertEquals(300, ROUND.mmPerVolt(250), EXACT);
        assertEquals(1.466, ROUND.mmPerVolt(250) * 5 / 1023, 1e-3);
        assertEquals(75, ROUND.mmPerVolt(100), EXACT);
        double volts = ROUND.volts(250);
        assertEquals(ROUND.mmPerVolt(250), (ROUND.mm(volts - 1e-5) - ROUND.mm(volts + 1e-5)) / 2e-5, 1e-3);
    }

    @Test
    void endsThatDoNotFallAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> InfraredLaw.throughEnds(0, 1, 100, 2, 250));
        assertThrows(IllegalArgumentException.class, () -> InfraredLaw.throughEnds(0, 2, 250, 1, 250));
        assertThrows(IllegalArgumentException.class, () -> InfraredLaw.throughEnds(1, 2, 100, 1, 250));
        assertThrows(IllegalArgumentException.class, () -> InfraredLaw.throughEnds(0, Double.NaN, 100, 1, 250));
    }

    @Test
    void lawsOfNoSensorAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new InfraredLaw(1.1, 300, 50));
        assertThrows(IllegalArgumentException.class, () -> new InfraredLaw(Double.NaN, 300, 50));
        assertThrows(IllegalArgumentException.class, () -> new InfraredLaw(0, 0, 50));
        assertThrows(IllegalArgumentException.class, () -> new InfraredLaw(0, 10_001, 50));
        assertThrows(IllegalArgumentException.class, () -> new InfraredLaw(0, 300, 201));
        assertThrows(IllegalArgumentException.class, () -> ROUND.volts(-50));
    }
}
