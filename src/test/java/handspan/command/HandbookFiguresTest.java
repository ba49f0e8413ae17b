package handspan.command;

import static java.util.Map.entry;
import static org.junit.jupiter.api.Assertions.assertEquals;

import handspan.hand.smooth.OnePole;
import handspan.hand.smooth.SensorNoise;
import handspan.hand.smooth.SmoothSettings;
import handspan.instrument.sensor.Air;
import handspan.instrument.sensor.EchoSensor;
import handspan.instrument.sensor.InfraredPart;
import handspan.instrument.sensor.NoReadings;
import handspan.instrument.sensor.Photoresistor;
import handspan.instrument.sensor.Unit;
import handspan.instrument.survey.SeenFlicker;
import handspan.music.level.LevelCurve;
import handspan.music.tuning.Direction;
import handspan.music.tuning.EqualDivision;
import handspan.music.tuning.JustIntonation;
import handspan.music.tuning.PitchCurve;
import handspan.music.tuning.ReferencePitch;
import handspan.music.tuning.SnapLimits;
import handspan.number.fit.Noise;
import handspan.number.fit.Normal;
import handspan.number.fit.Robust;
import handspan.number.fit.SteadyValue;
import handspan.number.fit.StudentT;
import handspan.number.units.Cents;
import handspan.number.units.Decibels;
import handspan.outside.midi.BentNote;
import handspan.outside.osc.packet.OscTimeTag;
import handspan.room.budget.LatencyBudget;
import handspan.room.budget.MissedNote;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeSet;
import java.util.function.DoubleSupplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The figures in the tables of the handbook's formulas are those that the program computes, to the last digit printed.
 *
 * <p>Written into the page from outside the program: note frequencies and just intervals from published tables (B. H.
 * Suits, Michigan Technological University: C4 261.63 Hz; Ellis: 386.31 and 701.96 cents); speeds of sound from
 * Cramer's equation worked out apart from this code (the published table of one decimal: 331.6, 344.0, 350.3 m/s); t
 * and normal quantiles from JCGM 100:2008, tables G.2 and G.1; seconds from 1900 to 1970 from RFC 5905, Figure 4; bends
 * from the MIDI 1.0 Detailed Specification. All others are worked out by hand from the formula above them.
 */
class HandbookFiguresTest {
    private static final NoReadings NONE_BESIDES = NoReadings.NONE;

    private static final Map<String, DoubleSupplier> COMPUTED = Map.ofEntries(
            entry("key 60 at A4 = 440 Hz", () -> ReferencePitch.A440.hz(60)),
            entry(
                    "key 69 at A4 = 415 Hz, below 440 Hz",
                    () -> Cents.between(new ReferencePitch(415).hz(69), ReferencePitch.A440.hz(69))),
            entry("a just major third", () -> new JustIntonation().cents(4)),
            entry("a just fifth", () -> new JustIntonation().cents(7)),
            entry("a fifth in 19 equal steps", () -> new EqualDivision(19).cents(7)),
            entry(
                    "key half-way between A3 (57) and A5 (81), even",
                    () -> new PitchCurve(57, 81, Direction.HIGH_FAR).key(0.5)),
            entry("steepness at the far end over that at the near end, k = 3", () -> {
                PitchCurve curve = new PitchCurve(57, 81, Direction.HIGH_FAR, 3);
                return curve.steepness(1) / curve.steepness(0);
            }),
            entry(
                    "two octaves in 400 mm",
                    () -> new PitchCurve(57, 81, Direction.HIGH_FAR).steepness(0.5)
                            * ReferencePitch.CENTS_PER_KEY
                            / 400),
            entry("gain of -6 dB", () -> Decibels.gain(-6)),
            entry("level in the middle of the usual curve", () -> Decibels.of(LevelCurve.USUAL.gain01(0.5))),
            entry("speed of sound at 0 C, 50 %", () -> Air.at(0).speedOfSoundMPerS()),
            entry("speed of sound at 20 C, 50 %", () -> Air.at(20).speedOfSoundMPerS()),
            entry("speed of sound at 30 C, 50 %", () -> Air.at(30).speedOfSoundMPerS()),
            entry("400 mm at 20 C, seen at 30 C without being told", () -> {
                EchoSensor warm = new EchoSensor(Unit.US, Air.at(30), NONE_BESIDES);
                return new EchoSensor(Unit.US, Air.at(20), NONE_BESIDES).physical(warm.raw(400));
            }),
            entry(
                    "10-80 cm part at 100 mm (the data sheet draws 2.327)",
                    () -> InfraredPart.TO_80_CM.law().volts(100)),
            entry(
                    "10-80 cm part at 400 mm (the data sheet draws 0.733)",
                    () -> InfraredPart.TO_80_CM.law().volts(400)),
            entry("4-30 cm part at 100 mm", () -> InfraredPart.TO_30_CM.law().volts(100)),
            entry("half scale of 10 bits, 511.5 of 1023", () -> light(511.5)),
            entry("900 counts of 1023", () -> light(900)),
            entry("median absolute deviation to standard deviation", () -> Robust.MAD_TO_SD),
            entry(
                    "white part of 1, 3, 1, 3, 1, 3, 1, 3",
                    () -> Noise.of(new double[] {1, 3, 1, 3, 1, 3, 1, 3}).white()),
            entry("median of normal values scatters more than their mean by", () -> {
                SteadyValue held = SteadyValue.of(
                        new Random(4).doubles(200).map(x -> 300 + x).toArray());
                return held.standardUncertainty()
                        * Math.sqrt(held.effectiveCount())
                        / held.noise().deviation();
            }),
            entry(
                    "share a that brings noise of 3 mm down to 1 mm",
                    () -> smoothing().share01()),
            entry("its lag at 50 readings a second", () -> smoothing().stillLagMs()),
            entry("share of a one-pole of 2 Hz, readings 20 ms apart", () -> OnePole.share01(2, 0.02)),
            entry(
                    "h for a wobble of 5 cents, a = 0.2, 50 decisions a second",
                    () -> SnapLimits.hysteresisCents(5, 0.2, 50)),
            entry("P in the middle of a cell of 4 s width", () -> 100 * MissedNote.chance01(20, 20, 10)),
            entry("t for 95 % and 9 degrees of freedom", () -> StudentT.coverage(9, 0.95)),
            entry("normal distribution, 95 %", () -> Normal.coverage(0.95)),
            entry("a line of 20 characters at 9600 baud", () -> wireMs(9600)),
            entry("the same at 115200", () -> wireMs(115_200)),
            entry("seconds from 1900 to 1970", () -> OscTimeTag.of(0, 0) >>> 32),
            entry("half a second in the lower 32 bits", () -> OscTimeTag.of(0, 500_000_000) & 0xffff_ffffL),
            entry("one semitone up at a range of 2", () -> BentNote.value(2, 1)),
            entry("two semitones down at a range of 2", () -> BentNote.value(2, -2)),
            entry("one step of the bend at a range of 2", () -> 100.0 / (BentNote.value(2, 1) - BentNote.value(2, 0))),
            entry("100 Hz seen at 49 lines a second", () -> SeenFlicker.hz(100, 49)));

    private static double light(double raw) {
        return Photoresistor.of(Unit.COUNTS10, 5, NONE_BESIDES).physical(raw);
    }

    private static SmoothSettings smoothing() {
        return new SmoothSettings(SensorNoise.even(3), 50, 1, 1000);
    }

    private static double wireMs(int baud) {
        return LatencyBudget.of(33, 50, 20, baud, 0, true).wireMs();
    }

    /** A figure of the page. */
    record Figure(String name, String printed) {
        double value() {
            return Double.parseDouble(number());
        }

        private String number() {
            return printed.split(" ", -1)[0];
        }

        /** Half a unit of the last digit printed. */
        double tolerance() {
            int point = number().indexOf('.');
            return 0.5000001 * Math.pow(10, point < 0 ? 0 : -(number().length() - point - 1.0));
        }

        @Override
        public String toString() {
            return name + ": " + printed;
        }
    }

    static Stream<Figure> figures() {
        List<Figure> figures = new ArrayList<>();
        boolean table = false;
        for (String line : HandbookPages.page("formulas").lines().toList()) {
            if (line.equals("| figure | value |")) {
                table = true;
            } else if (!line.startsWith("|")) {
                table = false;
            } else if (table && !line.startsWith("|---")) {
                List<String> cells = HandbookPages.rows(line).get(0);
                figures.add(new Figure(cells.get(0), cells.get(1)));
            }
        }
        return figures.stream();
    }

    @ParameterizedTest
    @MethodSource("figures")
    void theProgramComputes(Figure figure) {
        DoubleSupplier computed = COMPUTED.get(figure.name());
        if (computed == null) {
            throw new AssertionError("nothing computes '" + figure.name() + "'");
        }
        assertEquals(figure.value(), computed.getAsDouble(), figure.tolerance());
    }

    @Test
    void everyFigureThatIsComputedStandsInThePage() {
        TreeSet<String> named = new TreeSet<>();
        figures().forEach(figure -> named.add(figure.name()));
        assertEquals(new TreeSet<>(COMPUTED.keySet()), named);
    }
}
