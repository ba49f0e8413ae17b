package handspan.bench;

import handspan.hand.smooth.SensorNoise;
import handspan.hand.trial.Trace;
import handspan.number.fit.MonotoneCurve;
import handspan.number.units.Nanos;
import handspan.outside.simulate.DistanceErrors;
import handspan.outside.simulate.EchoModel;
import handspan.outside.simulate.EchoSettings;
import handspan.outside.simulate.HandSettings;
import handspan.outside.simulate.InfraredModel;
import handspan.outside.simulate.InfraredSettings;
import handspan.outside.simulate.LightCell;
import handspan.outside.simulate.LightModel;
import handspan.outside.simulate.LightRoom;
import handspan.outside.simulate.SensorModel;
import handspan.outside.simulate.SimulatedHand;
import handspan.outside.simulate.TimeOfFlightModel;
import handspan.outside.simulate.TimeOfFlightSettings;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * A specimen of a simulated sensor, learned as a calibration would: where its number lies along the distance, and how
 * it scatters there. It then sees hands.
 */
final class FeelKind {
    /** The kinds held against each other, with their rates and where hands play over them. */
    enum Kind {
        TIME_OF_FLIGHT(50, 120, 480),
        ECHO(18, 120, 480),
        INFRARED(26, 120, 340),
        LIGHT(50, 30, 105);

        final double ratePerS;
        final double nearMm;
        final double farMm;

        Kind(double ratePerS, double nearMm, double farMm) {
            this.ratePerS = ratePerS;
            this.nearMm = nearMm;
            this.farMm = farMm;
        }
    }

    private static final int PLACES = 13;
    private static final int READS = 400;

    /** A board's clock: so much of a reading's interval either way. */
    private static final double UNEVEN_01 = 0.02;

    private final Kind kind;
    private final SensorModel model;
    private final MonotoneCurve toMm;
    private final SensorNoise noise;
    private long now = 100 * Nanos.PER_SECOND;

    FeelKind(Kind kind, long seed) {
        this.kind = kind;
        this.model = model(kind, seed);
        List<MonotoneCurve.Point> points = new ArrayList<>();
        List<double[]> reads = new ArrayList<>();
        double margin = 0.08 * (kind.farMm - kind.nearMm);
        for (int i = 0; i < PLACES; i++) {
            double mm = kind.nearMm - margin + i * (kind.farMm - kind.nearMm + 2 * margin) / (PLACES - 1);
            double[] here = still(mm);
            reads.add(here);
            points.add(new MonotoneCurve.Point(mean(here), mm));
        }
        this.toMm = MonotoneCurve.through(points);
        List<SensorNoise.Point> noises = new ArrayList<>();
        for (int i = 0; i < PLACES; i++) {
            noises.add(new SensorNoise.Point(points.get(i).y(), scatterMm(reads.get(i))));
        }
        this.noise = new SensorNoise(noises);
    }

    /** Without supply spikes and lamp flicker, which are no matter of smoothing. */
    private static SensorModel model(Kind kind, long seed) {
        return switch (kind) {
            case TIME_OF_FLIGHT ->
                new TimeOfFlightModel(TimeOfFlightSettings.likeTheMeasuredHour(DistanceErrors.seeded(seed)), seed);
            case ECHO -> new EchoModel(EchoSettings.usual(20, DistanceErrors.seeded(seed)), seed);
            case INFRARED -> new InfraredModel(InfraredSettings.seeded(seed).withFaults(1, 0), seed);
            case LIGHT ->
                new LightModel(
                        LightCell.seeded(seed, LightCell.Side.TO_SUPPLY),
                        LightRoom.steady(150),
                        LightModel.USUAL_NOISE_COUNTS,
                        seed);
        };
    }

    private double[] still(double mm) {
        SimulatedHand hand = new SimulatedHand(HandSettings.STILL, 1);
        now = hand.goTo(mm, now, 0.5) + Nanos.PER_SECOND;
        double[] values = new double[READS];
        int count = 0;
        while (count < READS) {
            now += Nanos.ofSeconds(1 / kind.ratePerS);
            double raw = model.read(hand, now, 0);
            if (isReading(raw)) {
                values[count++] = raw;
            }
        }
        return values;
    }

    private boolean isReading(double raw) {
        return switch (kind) {
            case TIME_OF_FLIGHT -> raw > 0 && raw < 2000;
            case ECHO -> raw > 200 && raw < 30_000;
            case INFRARED, LIGHT -> raw > 0 && raw < 1023;
        };
    }

    private static double mean(double[] values) {
        return java.util.Arrays.stream(values).average().orElseThrow();
    }

    /** Root mean square of the differences of neighbours over the root of 2, without the wildest. */
    private double scatterMm(double[] values) {
        double[] squares = new double[values.length - 1];
        for (int i = 1; i < values.length; i++) {
            double difference = toMm.at(values[i]) - toMm.at(values[i - 1]);
            squares[i - 1] = difference * difference / 2;
        }
        java.util.Arrays.sort(squares);
        return Math.sqrt(java.util.Arrays.stream(squares)
                .limit(Math.round(0.99 * squares.length))
                .average()
                .orElseThrow());
    }

    SensorNoise noise() {
        return noise;
    }

    /** Where it is noisiest, mm. */
    double worstMm() {
        return noise.at(kind.nearMm) > noise.at(kind.farMm) ? kind.nearMm : kind.farMm;
    }

    /** One reading: when, where; not a number where there was none. */
    record Reading(double timeS, double mm) {}

    /** A hand's way and what was read of it. */
    record Seen(String gesture, Trace hand, List<Reading> readings, double longestLagMs) {}

    /** A still hand at the noisiest place. */
    Seen still(double seconds, Random random) {
        SimulatedHand hand = new SimulatedHand(HandSettings.STILL, 1);
        hand.goTo(worstMm(), now, 0.5);
        return see("still", hand, seconds, 160, random);
    }

    /** Stays and minimum-jerk moves. */
    Seen moves(double seconds, Random random) {
        SimulatedHand hand = new SimulatedHand(HandSettings.USUAL, random.nextLong());
        long time = now;
        double place = kind.nearMm + random.nextDouble() * (kind.farMm - kind.nearMm);
        hand.goTo(place, time, 0.3);
        time += Nanos.ofSeconds(0.8);
        double most = Math.min(250, (kind.farMm - kind.nearMm) / 2);
        while (time < now + Nanos.ofSeconds(seconds + 2)) {
            double length = 15 * Math.pow(most / 15, random.nextDouble());
            boolean outward = place + length <= kind.farMm && (place - length < kind.nearMm || random.nextBoolean());
            place += outward ? length : -length;
            double moveS = Math.max(0.2 + 0.6 * random.nextDouble(), 1.875 * length / 1500);
            hand.goTo(place, time, moveS);
            time += Nanos.ofSeconds(moveS + 0.2 + 0.5 * random.nextDouble());
        }
        return see("moves", hand, seconds, 160, random);
    }

    /** A sway of so many Hz. */
    Seen sway(double hz, double seconds, Random random) {
        SimulatedHand hand = new SimulatedHand(HandSettings.USUAL, random.nextLong());
        double middle = (kind.nearMm + kind.farMm) / 2;
        double half = Math.min(60 / (1 + hz), (kind.farMm - kind.nearMm) / 3);
        hand.goTo(middle, now, 0.3);
        hand.sway(middle, half, hz, now + Nanos.PER_SECOND, seconds + 2);
        return see("sway " + BenchTable.figure(hz, 1) + " Hz", hand, seconds, Math.min(160, 450 / hz), random);
    }

    /** Slow slides of 40 mm/s to and fro. */
    Seen slides(double seconds, Random random) {
        SimulatedHand hand = new SimulatedHand(HandSettings.USUAL, random.nextLong());
        double length = 0.6 * (kind.farMm - kind.nearMm);
        double middle = (kind.nearMm + kind.farMm) / 2;
        hand.goTo(middle, now, 0.3);
        hand.sway(middle, length / 2, 40 / (Math.PI * length), now + Nanos.PER_SECOND, seconds + 2);
        return see("slow slides", hand, seconds, 160, random);
    }

    private Seen see(String gesture, SimulatedHand hand, double seconds, double longestLagMs, Random random) {
        long start = now + 2 * Nanos.PER_SECOND;
        List<Reading> readings = new ArrayList<>();
        int count = (int) (seconds * kind.ratePerS);
        for (int i = 0; i < count; i++) {
            double timeS = (i + UNEVEN_01 * (2 * random.nextDouble() - 1)) / kind.ratePerS;
            double raw = model.read(hand, start + Nanos.ofSeconds(timeS), 0);
            readings.add(new Reading(timeS, isReading(raw) ? toMm.at(raw) : Double.NaN));
        }
        now = start + Nanos.ofSeconds(seconds + 3);
        Trace trace = Trace.of(seconds, time -> hand.trueMm(start + Nanos.ofSeconds(time)));
        return new Seen(gesture, trace, readings, longestLagMs);
    }

    double ratePerS() {
        return kind.ratePerS;
    }
}
