package handspan.instrument.survey;

import handspan.instrument.line.LineShape;
import handspan.instrument.line.LineShape.Nature;
import handspan.instrument.line.Reading;
import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.SensorKind;
import handspan.instrument.sensor.Unit;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * Which number follows which hand: compares what each slot of a line did while no hand, the pitch hand, the level hand
 * moved. A number follows a hand that takes it from its rest, to and fro; a time, a counter, a temperature does not.
 * Owned by one thread.
 */
public final class HandWave {
    /** A hand is seen from some cm to some 60 cm; an echo takes 5.8 microseconds a mm, there and back. */
    private static final double MOST_CM = 90;

    private static final double MOST_MM = 900;
    private static final double MOST_US = 5300;

    private final LineShape shape;
    private final ChannelProposer proposer;
    private final List<Map<WavePart, SlotInPart>> slots = new ArrayList<>();

    /** A search among the slots of a shape. */
    public HandWave(LineShape shape) {
        this.shape = shape;
        this.proposer = new ChannelProposer(shape);
        for (int i = 0; i < shape.slots().size(); i++) {
            Map<WavePart, SlotInPart> parts = new EnumMap<>(WavePart.class);
            for (WavePart part : WavePart.values()) {
                parts.put(part, new SlotInPart());
            }
            slots.add(parts);
        }
    }

    /** Takes a reading of a part. */
    public void onReading(WavePart part, Reading reading) {
        proposer.onReading(reading);
        for (int i = 0; i < slots.size(); i++) {
            part(i, part).add(reading, i);
        }
    }

    private SlotInPart part(int slot, WavePart part) {
        SlotInPart found = slots.get(slot).get(part);
        if (found == null) {
            throw new IllegalStateException("no part " + part);
        }
        return found;
    }

    /** What the parts so far say. */
    public FoundHands found() {
        List<AtRest> rests = new ArrayList<>();
        List<FollowedHand> pitch = new ArrayList<>();
        List<FollowedHand> level = new ArrayList<>();
        for (int i = 0; i < slots.size(); i++) {
            AtRest rest = AtRest.of(part(i, WavePart.AWAY));
            rests.add(rest);
            pitch.add(FollowedHand.of(part(i, WavePart.PITCH), rest));
            level.add(FollowedHand.of(part(i, WavePart.LEVEL), rest));
        }
        // a hand over one sensor shadows another one: the pitch hand's own number does not follow the other hand
        OptionalInt pitchSlot = best(IntStream.range(0, slots.size()).toArray(), pitch, level);
        OptionalInt levelSlot = best(
                IntStream.range(0, slots.size())
                        .filter(i -> pitchSlot.isEmpty() || i != pitchSlot.getAsInt())
                        .toArray(),
                level,
                List.of());
        List<ChannelGuess> guesses = new ArrayList<>();
        List<ChannelGuess> plain = proposer.guesses();
        for (int i = 0; i < slots.size(); i++) {
            String evidence = "hands away: " + rests.get(i).words() + "; pitch hand: "
                    + pitch.get(i).words() + "; other hand: " + level.get(i).words();
            boolean isPitch = pitchSlot.isPresent() && pitchSlot.getAsInt() == i;
            FollowedHand followed = isPitch ? pitch.get(i) : level.get(i);
            guesses.add(guess(plain.get(i), rests.get(i), followed, isPitch, evidence));
        }
        return new FoundHands(shape, pitchSlot, levelSlot, guesses);
    }

    /** Which of them follows the hand most, and other hands least. */
    private static OptionalInt best(int[] among, List<FollowedHand> hand, List<FollowedHand> other) {
        OptionalInt best = OptionalInt.empty();
        double most = Double.NEGATIVE_INFINITY;
        for (int i : among) {
            if (hand.get(i).isSure()) {
                double lead = hand.get(i).moved01()
                        - (other.isEmpty() ? 0 : other.get(i).moved01());
                if (lead > most) {
                    most = lead;
                    best = OptionalInt.of(i);
                }
            }
        }
        return best;
    }

    /** Label and unit count first, then what rest and movement tell. */
    private static ChannelGuess guess(
            ChannelGuess plain, AtRest rest, FollowedHand followed, boolean isPitch, String evidence) {
        String all = plain.evidence() + "; " + evidence;
        if (plain.sure() || !followed.isSure()) {
            return new ChannelGuess(plain.spec(), plain.sure(), all, plain.nature());
        }
        String channel = plain.spec().channel();
        double high = followed.high();
        boolean wentOut = Double.isNaN(rest.low()) || (rest.quiet() && beyond(rest.same(), followed));
        if (wentOut && high <= MOST_US && followed.low() > 0) {
            // nothing but a ranger says again and again the same number, or none, for want of a hand
            Unit unit = high <= MOST_CM ? Unit.CM : high <= MOST_MM ? Unit.MM : Unit.US;
            SensorKind kind = unit == Unit.US ? SensorKind.ECHO : SensorKind.DISTANCE;
            boolean clear = unit == Unit.US || plain.spec().unit() == unit;
            return new ChannelGuess(
                    new ChannelSpec(channel, kind, unit),
                    clear,
                    all + "; without a hand it measures nothing",
                    Nature.LIVE);
        }
        boolean whole = followed.low() == Math.rint(followed.low()) && high == Math.rint(high);
        if (whole && followed.low() >= 0 && high <= 4095 && rest.high() <= 2 * 4095) {
            boolean tenBits = Math.max(high, rest.quiet() ? rest.same() : high) <= 1023;
            boolean rises = followed.low() + high > rest.low() + rest.high();
            SensorKind kind = rises && isPitch ? SensorKind.INFRARED : SensorKind.PHOTORESISTOR;
            return new ChannelGuess(
                    new ChannelSpec(channel, kind, tenBits ? Unit.COUNTS10 : Unit.COUNTS12),
                    false,
                    all + "; a hand makes its whole numbers " + (rises ? "rise" : "fall"),
                    Nature.LIVE);
        }
        return new ChannelGuess(plain.spec(), plain.sure(), all, plain.nature());
    }

    /** Whether a rest's one number lies where no hand's did, and is no end of a converter's scale. */
    private static boolean beyond(double same, FollowedHand followed) {
        boolean end = same == 1023 || same == 4095;
        return !end && (same <= 0 || same < followed.low() / 2 || same > 1.5 * followed.high());
    }
}
