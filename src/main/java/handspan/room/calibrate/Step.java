package handspan.room.calibrate;

import handspan.music.tuning.NoteName;
import handspan.number.units.Figures;
import handspan.room.HandRole;
import handspan.room.Hold;
import handspan.room.StepKind;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * One thing the player is asked to do.
 *
 * @param kind what
 * @param hand with which hand
 * @param mm true distance by ruler, where the player gave it
 * @param key key number of the note, where a note is asked for
 * @param reach which reach it is, and what for, where it asks for one
 */
public record Step(StepKind kind, HandRole hand, OptionalDouble mm, OptionalInt key, Optional<Reach> reach) {
    /**
     * A reach for a place that was held before.
     *
     * @param number counts up from 1 within a calibration
     * @param target kind of the step that held the place
     */
    public record Reach(int number, StepKind target) {
        /** Checks both. */
        public Reach {
            if (number < 1 || number > 99) {
                throw new IllegalArgumentException("reach " + number + " (1..99)");
            }
            if (!target.isPlace()) {
                throw new IllegalArgumentException("reach for " + target.word() + " (near, mid, far, ruler, note)");
            }
        }
    }

    private static final String RULER = "ruler-";
    private static final String NOTE = "note-";
    private static final String AIM = "aim-";

    /** Checks that a ruler step has a distance and a note step a note. */
    public Step {
        boolean noDistance = kind == StepKind.RULER && mm.isEmpty();
        boolean noNote = kind == StepKind.NOTE && key.isEmpty();
        if (noDistance || noNote) {
            throw new IllegalArgumentException("step " + kind.word() + " without its distance or note");
        }
        if ((kind == StepKind.AIM) != reach.isPresent()) {
            throw new IllegalArgumentException("step " + kind.word() + (reach.isPresent() ? " with" : " without")
                    + " a place to reach for (aim steps alone have one)");
        }
    }

    /** A step without a ruler. */
    public static Step of(StepKind kind, HandRole hand) {
        return new Step(kind, hand, OptionalDouble.empty(), OptionalInt.empty(), Optional.empty());
    }

    /** A step at an end of the zone whose distance is known by ruler. */
    public static Step of(StepKind kind, HandRole hand, OptionalDouble mm) {
        return new Step(kind, hand, mm, OptionalInt.empty(), Optional.empty());
    }

    /** The pitch hand at a distance by ruler. */
    public static Step ruler(double mm) {
        return of(StepKind.RULER, HandRole.PITCH, OptionalDouble.of(mm));
    }

    /** The pitch hand where a note shall be. */
    public static Step note(int key) {
        return new Step(StepKind.NOTE, HandRole.PITCH, OptionalDouble.empty(), OptionalInt.of(key), Optional.empty());
    }

    /**
     * The pitch hand back at a place, unaided.
     *
     * @param number of the reach, from 1
     * @param place the step that held it, of the pitch hand
     */
    public static Step aim(int number, Step place) {
        return new Step(StepKind.AIM, HandRole.PITCH, place.mm, place.key, Optional.of(new Reach(number, place.kind)));
    }

    /**
     * One word for marks and messages: {@code near}, {@code open}, {@code level-far}, {@code ruler-250},
     * {@code note-A4}, {@code aim-3-far}, {@code aim-4-note-A4}.
     */
    public String id() {
        if (reach.isPresent()) {
            return AIM + reach.get().number() + "-" + place().id();
        }
        if (kind == StepKind.RULER) {
            return RULER + Figures.text(mm.orElseThrow(), 1);
        }
        if (kind == StepKind.NOTE) {
            return NOTE + NoteName.of(key.orElseThrow());
        }
        boolean plain = kind == StepKind.MID
                ? hand == HandRole.LEVEL
                : hand == HandRole.PITCH || (kind != StepKind.NEAR && kind != StepKind.FAR);
        return plain ? kind.word() : hand.word() + "-" + kind.word();
    }

    /** The step that held the place that this one reaches for; this one where it is no reach. */
    Step place() {
        return reach.map(wanted -> new Step(wanted.target(), hand, mm, key, Optional.empty()))
                .orElse(this);
    }

    /**
     * The step that {@link #id} names.
     *
     * @return empty when it names none
     */
    public static Optional<Step> byId(String id) {
        try {
            if (id.startsWith(AIM)) {
                String[] parts = id.split("-", 3);
                int number = Integer.parseInt(parts[1]);
                return parts.length < 3 ? Optional.empty() : byId(parts[2]).map(place -> aim(number, place));
            }
            if (id.startsWith(RULER)) {
                return Optional.of(ruler(Double.parseDouble(id.substring(RULER.length()))));
            }
            if (id.startsWith(NOTE)) {
                return Optional.of(note(NoteName.parse(id.substring(NOTE.length()))));
            }
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
        for (StepKind kind : StepKind.values()) {
            for (HandRole hand : HandRole.values()) {
                boolean plain = kind != StepKind.RULER && kind != StepKind.NOTE && kind != StepKind.AIM;
                if (plain && hand == usualHand(kind, hand)) {
                    Step step = of(kind, hand);
                    if (step.id().equals(id)) {
                        return Optional.of(step);
                    }
                }
            }
        }
        return Optional.empty();
    }

    /** Rest is the pitch hand's step, open and covered light are the level hand's. */
    private static HandRole usualHand(StepKind kind, HandRole hand) {
        return switch (kind) {
            case REST, RULER, NOTE, AIM -> HandRole.PITCH;
            case NEAR, MID, FAR -> hand;
            case OPEN, COVERED -> HandRole.LEVEL;
        };
    }

    /** What was held, with the distance or the note that this step asked for. */
    Hold with(Hold hold) {
        Hold asked = hold.asked(mm, key);
        return reach.map(wanted -> asked.reaching(wanted.target())).orElse(asked);
    }

    /** What to say to the player. */
    public String prompt() {
        String place = mm.isPresent() ? " (" + Figures.text(mm.getAsDouble(), 0) + " mm)" : "";
        return switch (kind) {
            case REST -> "take both hands away";
            case NEAR -> "hold the " + hand.word() + " hand still at the near end" + place;
            case FAR -> "hold the " + hand.word() + " hand still at the far end" + place;
            case OPEN -> "leave the light sensor open";
            case MID ->
                hand == HandRole.LEVEL
                        ? "hold the level hand still half-way over the light sensor"
                        : "hold the pitch hand still half-way between both ends";
            case COVERED -> "hold the level hand still where it shall be silent, close over the light sensor";
            case RULER -> "hold the pitch hand still at " + Figures.text(mm.orElseThrow(), 0) + " mm by the ruler";
            case NOTE -> "hold the pitch hand still where " + NoteName.of(key.orElseThrow()) + " shall be";
            case AIM -> "reach for " + placeWords() + " and stop there";
        };
    }

    /** A place that was held, in words. */
    String placeWords() {
        return switch (place().kind()) {
            case NEAR -> "the near end";
            case MID -> "half-way";
            case FAR -> "the far end";
            case RULER -> Figures.text(mm.orElseThrow(), 0) + " mm";
            case NOTE -> NoteName.of(key.orElseThrow());
            case REST, OPEN, COVERED, AIM -> kind.word();
        };
    }
}
