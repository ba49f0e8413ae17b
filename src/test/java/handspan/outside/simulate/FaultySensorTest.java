package handspan.outside.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.number.units.Nanos;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FaultySensorTest {
    private static final long START = Nanos.ofSeconds(100);
    private static final double LINES_PER_S = 50;
    private static final SimulatedHand ABSENT = new SimulatedHand(HandSettings.STILL, 1);

    private static FaultySensor ideal(SensorFaults faults) {
        return new FaultySensor(new TimeOfFlightModel(TimeOfFlightSettings.ideal(), 1), faults, 7, START);
    }

    private static double[] read(SensorModel sensor, SimulatedHand hand, double seconds) {
        double[] mm = new double[(int) Math.round(seconds * LINES_PER_S)];
        for (int i = 0; i < mm.length; i++) {
            mm[i] = sensor.read(hand, START + Nanos.ofSeconds((i + 1) / LINES_PER_S), 0);
        }
        return mm;
    }

    @Test
    void aSensorWithoutFaultsIsTheSensor() {
        TimeOfFlightSettings part = TimeOfFlightSettings.usual(DistanceErrors.NONE);
        SimulatedHand hand = TimeOfFlightModelTest.stillAt(300);
        double[] bare = read(new TimeOfFlightModel(part, 3), hand, 20);
        FaultySensor wrapped = new FaultySensor(new TimeOfFlightModel(part, 3), SensorFaults.NONE, 7, START);
        assertEquals(Arrays.toString(bare), Arrays.toString(read(wrapped, hand, 20)));
        assertEquals(20, wrapped.measuringMs());
        assertEquals(0, wrapped.decimals());
    }

    @ParameterizedTest
    @CsvSource({"0.3, 8", "0.3, 2", "0.1, 20", "0.6, 4"})
    void lostReadingsHaveTheirShareAndRunsOfEveryLength(double share01, int longest) {
        double[] mm =
                read(ideal(SensorFaults.NONE.withLost(share01, longest)), TimeOfFlightModelTest.stillAt(300), 2000);
        int[] runs = new int[longest + 1];
        int lost = 0;
        int run = 0;
        for (double value : mm) {
            boolean gone = value == 8190;
            if (!gone && run > 0) {
                runs[run]++;
            }
            run = gone ? run + 1 : 0;
            lost += gone ? 1 : 0;
        }
        assertEquals(share01, lost / (double) mm.length, 0.02);
        double all = Arrays.stream(runs).sum();
        for (int length = 1; length <= longest; length++) {
            // all lengths alike; five standard errors of a share
            double expected = 1.0 / longest;
            assertEquals(expected, runs[length] / all, 5 * Math.sqrt(expected * (1 - expected) / all));
        }
    }

    @Test
    void moreCanNotBeLostThanRunsAllow() {
        // runs of mean 4.5 with one good reading between them: 4.5 of 5.5
        assertEquals(0.81, SensorFaults.NONE.withLost(0.81, 8).lost01());
        assertThrows(IllegalArgumentException.class, () -> SensorFaults.NONE.withLost(0.82, 8));
    }

    @Test
    void theNearestThingInTheBeamIsSeen() {
        FaultySensor cluttered = ideal(SensorFaults.NONE.withClutter(700));
        assertEquals(700, read(cluttered, ABSENT, 0.02)[0]);
        assertEquals(700, read(cluttered, TimeOfFlightModelTest.stillAt(900), 0.02)[0]);
        assertEquals(300, read(cluttered, TimeOfFlightModelTest.stillAt(300), 0.02)[0]);
        assertEquals(8190, read(ideal(SensorFaults.NONE), ABSENT, 0.02)[0]);
    }

    @Test
    void somebodyWalksPastOnceInThirtySeconds() {
        SensorFaults passer = SensorFaults.NONE.withPasser(450, 30);
        double[] mm = read(ideal(passer), ABSENT, 300);
        double seen = Arrays.stream(mm).filter(v -> v == 450).count();
        // ten walks of 1.2 s at 50 lines/s, give or take a line each
        assertEquals(600, seen, 10);
        assertEquals(mm.length, seen + Arrays.stream(mm).filter(v -> v == 8190).count());
        // the first walk begins after 28.8 s
        assertEquals(8190, mm[(int) (28.7 * LINES_PER_S)]);
        assertEquals(450, mm[(int) (28.9 * LINES_PER_S)]);
        double[] hidden = read(ideal(passer), TimeOfFlightModelTest.stillAt(300), 60);
        assertTrue(Arrays.stream(hidden).allMatch(v -> v == 300));
    }

    @ParameterizedTest
    @CsvSource({"0.02, 300", "60, 301.8", "240, 305.1", "1200, 307.9"})
    void anErrorGrowsWhileThePartWarmsUp(double seconds, double mm) {
        // by hand: 8 (1 - exp(-1/4)) = 1.77, 8 (1 - 1/e) = 5.06, 8 (1 - exp(-5)) = 7.95
        FaultySensor warming = ideal(SensorFaults.NONE.withCreep(8));
        long time = START + Nanos.ofSeconds(seconds);
        assertEquals(mm, warming.read(TimeOfFlightModelTest.stillAt(300), time, 0), 0.06);
    }

    @Test
    void aSlowSensorGivesTheTruthOfItsLastMeasurementAgain() {
        SimulatedHand hand = TimeOfFlightModelTest.stillAt(100);
        hand.goTo(500, START, 2);
        double[] mm = read(ideal(SensorFaults.NONE.withUpdateMs(100)), hand, 2);
        for (int i = 4; i < mm.length; i++) {
            // five lines of 20 ms to each 100 ms; line i ends (i + 1) periods after power-up
            int update = (i + 1) / 5;
            assertEquals(hand.trueMm(START + Nanos.ofMs(100 * update)), mm[i], 0.051, "line " + i);
        }
    }

    @Test
    void aFrozenSensorRepeatsItsLastValueForEver() {
        SimulatedHand hand = TimeOfFlightModelTest.stillAt(100);
        hand.goTo(500, START + Nanos.ofSeconds(9), 2);
        double[] mm = read(ideal(SensorFaults.NONE.frozenAfter(10)), hand, 3600);
        int last = (int) (10 * LINES_PER_S) - 2;
        assertTrue(mm[last] > 250 && mm[last] < 350 && mm[last] > mm[last - 1], mm[last] + " mm");
        assertTrue(Arrays.stream(mm, last, mm.length).allMatch(v -> v == mm[last]));
    }

    @Test
    void aLostReadingOfAnotherSensorIsItsOwn() {
        EchoSettings echo = EchoSettings.usual(20, DistanceErrors.NONE).withFaults(0, 0, 0);
        SensorFaults sleeve = SensorFaults.NONE.withLost(0.3, 8);
        double[] us = read(
                new FaultySensor(new EchoModel(echo, 1), sleeve, 7, START), TimeOfFlightModelTest.stillAt(300), 200);
        assertEquals(0.3, Arrays.stream(us).filter(v -> v == 38_000).count() / (double) us.length, 0.04);
        double[] counts = read(
                new FaultySensor(new InfraredModel(InfraredSettings.ideal(), 1), sleeve, 7, START),
                TimeOfFlightModelTest.stillAt(300),
                200);
        // less than the 0.25 V that the data sheet allows at 80 cm; the part is slower than the lines
        assertTrue(Arrays.stream(counts).filter(v -> v < 51).count() > 0.1 * counts.length);
    }
}
