package handspan.room.calibrate;

import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.Instrument;
import handspan.instrument.sensor.SensorKind;
import handspan.music.tuning.NoteName;
import handspan.number.units.Figures;
import handspan.room.HandRole;
import handspan.room.StepKind;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;

/**
 * The steps of a calibration as data.
 *
 * @param steps in order, at least one
 */
public record CalibrationPlan(List<Step> steps) {
    /** Fewest and most places by ruler, and notes by ear. */
    public static final int FEWEST_PLACES = 3;

    /** See {@link #FEWEST_PLACES}. */
    public static final int MOST_PLACES = 9;

    /** Fewest where pitch is played by light: three more than a level takes, because nothing tells its shape. */
    public static final int FEWEST_BY_LIGHT = 6;

    /** Reaches by which an aim is measured. */
    public static final int REACHES = 10;

    /** Most places among which a player reaches: more lie so close that one is taken for another. */
    private static final int MOST_TARGETS = 5;

    /** Any will do, as long as it stays the same. */
    private static final long ORDER_SEED = 20;

    /** Copies the steps. */
    public CalibrationPlan {
        steps = List.copyOf(steps);
    }

    /**
     * Two ends: rest, near and far of the pitch hand, then the level hand's own steps.
     *
     * @param instrument which channels it has
     * @param nearMm ruler distance of the near end, where known
     * @param farMm ruler distance of the far end, where known
     */
    public static CalibrationPlan of(Instrument instrument, OptionalDouble nearMm, OptionalDouble farMm) {
        if (instrument.pitch().kind() == SensorKind.PHOTORESISTOR) {
            throw new IllegalArgumentException("pitch by light: two ends do not tell how light runs between them:"
                    + " give --ruler MM,... or --by-ear NOTE,... with " + FEWEST_BY_LIGHT + " places or more");
        }
        return around(
                instrument,
                List.of(Step.of(StepKind.NEAR, HandRole.PITCH, nearMm), Step.of(StepKind.FAR, HandRole.PITCH, farMm)));
    }

    /**
     * The pitch hand at places by a ruler.
     *
     * @param rulerMm 3..9 distances, rising
     */
    public static CalibrationPlan byRuler(Instrument instrument, List<Double> rulerMm) {
        count(instrument, "--ruler", rulerMm.size());
        for (int i = 1; i < rulerMm.size(); i++) {
            if (!(rulerMm.get(i) > rulerMm.get(i - 1))) {
                throw new IllegalArgumentException("ruler distances " + Figures.text(rulerMm.get(i - 1), 1) + " and "
                        + Figures.text(rulerMm.get(i), 1) + " mm (they must rise): write them from near to far");
            }
        }
        return around(instrument, rulerMm.stream().map(Step::ruler).toList());
    }

    /**
     * The pitch hand where notes shall be, by ear.
     *
     * @param keys 3..9 key numbers, rising or falling all along: in the order from near to far
     */
    public static CalibrationPlan byEar(Instrument instrument, List<Integer> keys) {
        count(instrument, "--by-ear", keys.size());
        boolean rising = keys.get(1) > keys.get(0);
        for (int i = 1; i < keys.size(); i++) {
            if (keys.get(i).equals(keys.get(i - 1)) || keys.get(i) > keys.get(i - 1) != rising) {
                throw new IllegalArgumentException(
                        "notes " + NoteName.of(keys.get(i - 1)) + " and " + NoteName.of(keys.get(i))
                                + " (they must rise, or fall, all along): write them from near to far");
            }
        }
        return around(instrument, keys.stream().map(Step::note).toList());
    }

    /**
     * The same, and then {@value #REACHES} unaided reaches of the pitch hand for places that it has held by then: up to
     * five of those by ruler or by ear, spread over the zone; else both ends and half-way between them, which is held
     * for it. Each place is asked for about as often as the others, never twice in a row, in an order that is the same
     * each time but looks like none.
     */
    public CalibrationPlan withReaches() {
        List<Step> all = new ArrayList<>(steps);
        List<Step> places = places();
        if (places.size() < 2) {
            throw new IllegalArgumentException("reaches for " + places.size() + " places (at least 2)");
        }
        if (places.size() == 2) {
            Step mid = Step.of(StepKind.MID, HandRole.PITCH);
            all.add(all.indexOf(places.get(1)) + 1, mid);
            places = List.of(places.get(0), places.get(1), mid);
        }
        List<Step> order = inNoOrder(spread(places), places.get(places.size() - 1));
        for (int i = 0; i < order.size(); i++) {
            all.add(Step.aim(i + 1, order.get(i)));
        }
        return new CalibrationPlan(all);
    }

    /** Where the pitch hand holds, in the order of the steps. */
    private List<Step> places() {
        return steps.stream()
                .filter(step -> step.hand() == HandRole.PITCH && step.kind() != StepKind.REST)
                .toList();
    }

    private static List<Step> spread(List<Step> places) {
        if (places.size() <= MOST_TARGETS) {
            return places;
        }
        List<Step> spread = new ArrayList<>();
        for (int i = 0; i < MOST_TARGETS; i++) {
            spread.add(places.get((int) Math.round(i * (places.size() - 1) / (MOST_TARGETS - 1.0))));
        }
        return spread;
    }

    /** Rounds through all places, each shuffled; the hand is at the last held place when they begin. */
    private static List<Step> inNoOrder(List<Step> places, Step last) {
        Random random = new Random(ORDER_SEED);
        List<Step> order = new ArrayList<>();
        Step before = last;
        while (order.size() < REACHES) {
            List<Step> round = new ArrayList<>(places);
            do {
                Collections.shuffle(round, random);
            } while (round.get(0).equals(before));
            order.addAll(round);
            before = round.get(round.size() - 1);
        }
        return order.subList(0, REACHES);
    }

    /** Fewest places by ruler or by ear for a pitch sensor. */
    static int fewestPlaces(ChannelSpec pitch) {
        return pitch.kind() == SensorKind.PHOTORESISTOR ? FEWEST_BY_LIGHT : FEWEST_PLACES;
    }

    private static void count(Instrument instrument, String option, int places) {
        int fewest = fewestPlaces(instrument.pitch());
        if (places < fewest || places > MOST_PLACES) {
            throw new IllegalArgumentException(option + " with " + places + " places for "
                    + instrument.pitch().kind().word() + " (" + fewest + ".." + MOST_PLACES + ")");
        }
    }

    private static CalibrationPlan around(Instrument instrument, List<Step> pitchSteps) {
        List<Step> steps = new ArrayList<>();
        steps.add(Step.of(StepKind.REST, HandRole.PITCH));
        steps.addAll(pitchSteps);
        steps.addAll(levelSteps(instrument));
        return new CalibrationPlan(steps);
    }

    private static List<Step> levelSteps(Instrument instrument) {
        var level = instrument.level();
        if (level == null) {
            return List.of();
        }
        return level.kind() == SensorKind.PHOTORESISTOR
                ? List.of(
                        Step.of(StepKind.OPEN, HandRole.LEVEL),
                        Step.of(StepKind.MID, HandRole.LEVEL),
                        Step.of(StepKind.COVERED, HandRole.LEVEL))
                : List.of(Step.of(StepKind.NEAR, HandRole.LEVEL), Step.of(StepKind.FAR, HandRole.LEVEL));
    }
}
