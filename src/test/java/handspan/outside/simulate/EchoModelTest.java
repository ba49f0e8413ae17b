package handspan.outside.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.number.units.Nanos;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EchoModelTest {
    private static final double CRAMER_TOLERANCE_M_S = 0.2;
    private static final double NOISE_SHARE = 0.03;

    @ParameterizedTest
    @CsvSource({"0, 331.4550", "10, 337.4669", "20, 343.3672", "25, 346.2755", "30, 349.1560"})
    void theSpeedOfSoundAgreesWithCramersDryAir(double celsius, double metresPerSecond) {
        // O. Cramer, JASA 93(5) (1993) 2510-2516, dry air, 101,325 Pa; simple forms agree within 0.2 m/s
        assertEquals(metresPerSecond, AirSound.metresPerSecond(celsius), CRAMER_TOLERANCE_M_S);
    }

    @ParameterizedTest
    @CsvSource({"116, 2, 2", "290, 5, 5", "1000, 17.24, 17", "1450, 25, 25", "1507, 25.98, 25", "2900, 50, 50"})
    void centimetresFollowTheDataSheetRule(double echoUs, double hundredths, double whole) {
        // HC-SR04 module data sheet: microseconds / 58 = cm; whole-number division drops the remainder
        assertEquals(hundredths, EchoPrint.CENTIMETRE_HUNDREDTHS.raw(echoUs), 1e-9);
        assertEquals(whole, EchoPrint.WHOLE_CENTIMETRES.raw(echoUs));
    }

    @Test
    void anEchoFrom25CentimetresTakesTheTimeOfTheDataSheetRule() {
        // microseconds / 58 implies 344.83 m/s, which is air of 22.8 degrees; 25 cm = 1450 microseconds
        assertEquals(1450, exact(22.77).read(TimeOfFlightModelTest.stillAt(250), Nanos.PER_SECOND, 0), 1);
    }

    @Test
    void tenDegreesMoreShortenTheEchoBySevenMillimetresAt40Centimetres() {
        // dc/c = dT/(2T) = 10/586.3 = 1.7 %: the board that believes in 20 degrees is 7 mm short at 400 mm
        SimulatedHand hand = TimeOfFlightModelTest.stillAt(400);
        double cool = exact(20).read(hand, Nanos.PER_SECOND, 0);
        double warm = exact(30).read(hand, Nanos.PER_SECOND, 0);
        assertEquals(0.017, 1 - warm / cool, 0.001);
        assertEquals(7, 400 * (1 - warm / cool), 0.5);
    }

    @ParameterizedTest
    @CsvSource({"200, 1.25", "300, 1.7", "400, 3.5"})
    void noiseOnAFlatTargetHasTheMeasuredSize(double mm, double sdMm) {
        EchoSettings settings = EchoSettings.usual(20, DistanceErrors.NONE).withFaults(1, 0, 0);
        double[] us = read(new EchoModel(settings, 8), TimeOfFlightModelTest.stillAt(mm), 20_000);
        double mmPerUs = 0.3432 / 2; // 343.2 m/s at 20 degrees, ISO 9613-1
        assertEquals(sdMm, Series.sd(us) * mmPerUs, sdMm * NOISE_SHARE);
        assertEquals(mm, Series.mean(us) * mmPerUs, 0.2);
    }

    @Test
    void fortyFiveInAThousandPingsAtAHandAreLost() {
        EchoSettings settings = EchoSettings.usual(20, DistanceErrors.NONE);
        double[] us = read(new EchoModel(settings, 9), TimeOfFlightModelTest.stillAt(250), 40_000);
        double lost = Arrays.stream(us).filter(v -> v == 38_000).count();
        assertEquals(0.045, lost / us.length, 0.004);
    }

    @Test
    void noHandOrOneTooFarPrintsTheSentinelInTheUnitOfThePrint() {
        EchoSettings usual = EchoSettings.usual(20, DistanceErrors.NONE);
        SimulatedHand absent = new SimulatedHand(HandSettings.STILL, 1);
        SimulatedHand far = TimeOfFlightModelTest.stillAt(650);
        long time = Nanos.PER_SECOND;
        assertEquals(38_000, new EchoModel(usual, 1).read(absent, time, 0));
        assertEquals(38_000, new EchoModel(usual, 1).read(far, time, 0));
        EchoSettings zero = usual.withPrint(EchoPrint.WHOLE_CENTIMETRES, 0);
        assertEquals(0, new EchoModel(zero, 1).read(absent, time, 0));
        EchoSettings hundredths = usual.withPrint(EchoPrint.CENTIMETRE_HUNDREDTHS, 38_000);
        // 38,000 / 58
        assertEquals(655.17, new EchoModel(hundredths, 1).read(absent, time, 0), 1e-9);
    }

    @Test
    void aHandTooNearReadsGarbageThatIsOftenLarge() {
        EchoSettings settings = EchoSettings.usual(20, DistanceErrors.NONE).withFaults(1, 0, 0);
        double[] us = read(new EchoModel(settings, 2), TimeOfFlightModelTest.stillAt(8), 1000);
        long large = Arrays.stream(us).filter(v -> v > 5800).count();
        assertTrue(large > 500, large + " of 1000 beyond a metre");
    }

    @Test
    void aTimingStepLeavesOnlyItsMultiples() {
        EchoSettings settings = EchoSettings.usual(20, DistanceErrors.NONE).withFaults(1, 10, 0);
        double[] us = read(new EchoModel(settings, 2), TimeOfFlightModelTest.stillAt(300), 1000);
        assertTrue(Arrays.stream(us).allMatch(v -> v % 10 == 0));
        assertTrue(Arrays.stream(us).distinct().count() > 5);
    }

    @Test
    void aTimeOutInNoListIsPrintedLikeAnyOther() {
        // 46,600 / 58: one clone's time-out in hundredths of a centimetre
        EchoSettings clone = EchoSettings.usual(20, DistanceErrors.NONE)
                .withPrint(EchoPrint.CENTIMETRE_HUNDREDTHS, EchoSettings.CLONE_TIME_OUT_US);
        SimulatedHand absent = new SimulatedHand(HandSettings.STILL, 1);
        assertEquals(803.45, new EchoModel(clone, 1).read(absent, Nanos.PER_SECOND, 0), 1e-9);
    }

    @Test
    void aNeighboursPingMakesASecondLevel() {
        // by hand: up 240 mm and down sqrt(240^2 + 150^2) = 283.02 mm, half of it 261.51 mm
        Neighbour neighbour = new Neighbour(TimeOfFlightModelTest.stillAt(240), 150, 0.4);
        double[] us = read(beside(neighbour), TimeOfFlightModelTest.stillAt(300), 20_000);
        double own = 1;
        double other = 1;
        int run = 0;
        int longest = 0;
        for (double value : us) {
            double mm = value * 0.3432 / 2; // 343.2 m/s at 20 degrees, ISO 9613-1
            boolean heard = Math.abs(mm - 261.51) < 0.2;
            assertTrue(heard || Math.abs(mm - 300) < 0.2, mm + " mm");
            other += heard ? 1 : 0;
            own += heard ? 0 : 1;
            run = heard ? run + 1 : 0;
            longest = Math.max(longest, run);
        }
        assertEquals(0.4, other / (own + other), 0.015);
        assertEquals(2, longest);
    }

    @Test
    void aNeighbourFartherAwayIsHeardOnlyWhereNoHandIs() {
        Neighbour neighbour = new Neighbour(TimeOfFlightModelTest.stillAt(400), 150, 0.4);
        double[] us = read(beside(neighbour), TimeOfFlightModelTest.stillAt(300), 1000);
        assertEquals(1, Arrays.stream(us).distinct().count());
        double[] ghosts = read(beside(neighbour), new SimulatedHand(HandSettings.STILL, 1), 20_000);
        // by hand: (400 + 427.20) / 2 = 413.60 mm, 2410 microseconds at 343.2 m/s
        assertEquals(2, Arrays.stream(ghosts).distinct().count());
        assertEquals(2410, Arrays.stream(ghosts).min().orElseThrow(), 2);
        assertEquals(0.6, Arrays.stream(ghosts).filter(v -> v == 38_000).count() / 20_000.0, 0.015);
        Neighbour away = new Neighbour(new SimulatedHand(HandSettings.STILL, 1), 150, 0.4);
        double[] none = read(beside(away), new SimulatedHand(HandSettings.STILL, 1), 1000);
        assertTrue(Arrays.stream(none).allMatch(v -> v == 38_000));
    }

    private static EchoModel beside(Neighbour neighbour) {
        return new EchoModel(EchoSettings.usual(20, DistanceErrors.NONE).withFaults(0, 0, 0), 1, neighbour);
    }

    private static EchoModel exact(double celsius) {
        return new EchoModel(EchoSettings.usual(celsius, DistanceErrors.NONE).withFaults(0, 0, 0), 1);
    }

    private static double[] read(EchoModel model, SimulatedHand hand, int count) {
        double[] us = new double[count];
        for (int i = 0; i < count; i++) {
            us[i] = model.read(hand, Nanos.ofSeconds(1 + i / 18.0), 0);
        }
        return us;
    }
}
