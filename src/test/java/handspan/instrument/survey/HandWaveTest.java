package handspan.instrument.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.instrument.line.LineShape;
import handspan.instrument.line.Reading;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/**
 * The search for the hands, with numbers as boards print them: what stands for "no hand" is from the lines that such
 * boards send (see the data sheets' out-of-range values in {@link handspan.instrument.sensor.DistanceSensor}), the
 * hands are invented.
 */
class HandWaveTest {
    private static final double PER_S = 50;
    private static final double HZ = 0.6;

    /** A number: what it is without a hand and with one, which is 0 at the near end of its way and 1 at the far end. */
    private record Slot(DoubleUnaryOperator rest, DoubleUnaryOperator hand, WavePart follows) {}

    private final Random random = new Random(4);

    private static DoubleUnaryOperator constant(double value) {
        return time -> value;
    }

    private DoubleUnaryOperator about(double value, double deviation) {
        return time -> Math.rint(value + deviation * random.nextGaussian());
    }

    private static Slot apart(DoubleUnaryOperator always) {
        return new Slot(always, always, WavePart.AWAY);
    }

    private static Slot follows(WavePart part, DoubleUnaryOperator rest, double near, double far) {
        return new Slot(rest, at -> Math.rint(near + (far - near) * at), part);
    }

    private FoundHands found(Slot... numbers) {
        LineShape shape = LineShape.numbers(',', numbers.length);
        HandWave wave = new HandWave(shape);
        double time = 0;
        for (WavePart part : WavePart.values()) {
            time += part.readySeconds();
            for (int i = 0; i < part.seconds() * PER_S; i++) {
                time += 1 / PER_S;
                double[] values = new double[numbers.length];
                long present = 0;
                for (int n = 0; n < numbers.length; n++) {
                    boolean hand = numbers[n].follows() == part && part != WavePart.AWAY;
                    double at = 0.5 - 0.5 * Math.cos(2 * Math.PI * HZ * time);
                    double value = hand
                            ? numbers[n].hand().applyAsDouble(at)
                            : numbers[n].rest().applyAsDouble(time);
                    values[n] = Double.isNaN(value) ? 0 : value;
                    present |= Double.isNaN(value) ? 0 : 1L << n;
                }
                wave.onReading(part, new Reading(Math.round(1e9 * time), values, present));
            }
        }
        return wave.found();
    }

    private static String hands(FoundHands found) {
        return found.pitch().map(guess -> guess.spec().text()).orElse("-") + " "
                + found.level().map(guess -> guess.spec().text()).orElse("-");
    }

    @Test
    void eachHandIsFoundAmongTimesCountersTemperaturesAndFlicker() {
        FoundHands found = found(
                apart(time -> Math.rint(81_000 + 1000 * time)),
                follows(WavePart.LEVEL, about(874, 4), 240, 860),
                apart(time -> Math.rint(PER_S * time)),
                apart(time -> 22.5 + Math.rint(random.nextDouble()) / 10),
                follows(WavePart.PITCH, constant(8190), 90, 480),
                apart(about(500, 60)),
                apart(constant(1023)));
        assertEquals("5:distance:mm 2:photoresistor:counts10", hands(found));
        assertEquals(7, found.guesses().size());
        assertTrue(found.guesses().get(4).evidence().contains("pitch hand: 9"), "" + found.guesses());
        assertTrue(found.guesses().get(4).evidence().contains("other hand: as at rest"), "" + found.guesses());
    }

    /** Echo times: 5.8 microseconds a mm there and back; 38 ms of time-out is the data sheet's figure. */
    @Test
    void unitsGoByHowFarAHandIs() {
        assertEquals("1:echo:us -", hands(found(follows(WavePart.PITCH, constant(38_000), 520, 2800))));
        assertEquals("1:distance:cm -", hands(found(follows(WavePart.PITCH, constant(0), 9, 48))));
        assertEquals("1:distance:cm -", hands(found(follows(WavePart.PITCH, constant(-1), 9, 48))));
        assertEquals("1:distance:mm -", hands(found(follows(WavePart.PITCH, constant(Double.NaN), 90, 480))));
    }

    @Test
    void aHandThatMakesCountsRiseIsSeenByInfraredAndOneThatMakesThemFallByLight() {
        assertEquals(
                "1:infrared:counts10 2:photoresistor:counts10",
                hands(found(
                        follows(WavePart.PITCH, about(40, 2), 520, 110),
                        follows(WavePart.LEVEL, about(910, 3), 20, 850))));
        assertEquals("1:photoresistor:counts12 -", hands(found(follows(WavePart.PITCH, constant(4095), 600, 3900))));
    }

    /** The pitch hand darkens the light cell on its way, nearly as much as the level hand does. */
    @Test
    void aShadowIsNoHand() {
        double[] at = new double[1];
        Slot light = new Slot(about(874, 4), place -> Math.rint(300 + 500 * place), WavePart.LEVEL);
        Slot ranger = follows(WavePart.PITCH, constant(8190), 90, 480);
        LineShape shape = LineShape.numbers(',', 2);
        HandWave wave = new HandWave(shape);
        double time = 0;
        for (WavePart part : WavePart.values()) {
            for (int i = 0; i < 5 * PER_S; i++) {
                time += 1 / PER_S;
                at[0] = 0.5 - 0.5 * Math.cos(2 * Math.PI * HZ * time);
                boolean shadow = part != WavePart.AWAY;
                double bright = shadow
                        ? light.hand().applyAsDouble(at[0])
                        : light.rest().applyAsDouble(time);
                boolean there = part == WavePart.PITCH && at[0] > 0.2;
                double mm = there ? ranger.hand().applyAsDouble(at[0]) : 8190;
                wave.onReading(part, new Reading(Math.round(1e9 * time), new double[] {bright, mm}, 3));
            }
        }
        assertEquals("2:distance:mm 1:photoresistor:counts10", hands(wave.found()));
    }

    @Test
    void withoutAHandNoneIsFound() {
        FoundHands still =
                found(apart(constant(8190)), apart(about(870, 5)), apart(constant(Double.NaN)), apart(constant(0)));
        assertEquals("- -", hands(still));
        // a lamp that is switched during a part steps once, it does not go to and fro
        FoundHands lamp = found(new Slot(about(870, 5), at -> 0, WavePart.AWAY), apart(time -> time < 8 ? 870 : 400));
        assertEquals("- -", hands(lamp));
    }

    @Test
    void oneHandOverOneSensorTwiceIsThePitchHand() {
        Slot both = follows(WavePart.PITCH, constant(8190), 90, 480);
        FoundHands found = found(both, apart(constant(12)));
        assertEquals("1:distance:mm -", hands(found));
        assertEquals(
                List.of(true, false),
                found.guesses().stream().map(ChannelGuess::sure).toList());
    }
}
