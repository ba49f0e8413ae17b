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
 */
public record Step(StepKind kind, HandRole hand, OptionalDouble mm, OptionalInt key) {
    private static final String RULER = "ruler-";
    private static final String NOTE = "note-";

    /** Checks that a ruler step has a distance and a note step a note. */
    public Step {
        boolean noDistance = kind == StepKind.RULER && mm.isEmpty();
        boolean noNote = kind == StepKind.NOTE && key.isEmpty();
        if (noDistance || noNote) {
            throw new IllegalArgumentException("step " + kind.word() + " without its distance or note");
        }
    }

    /** A step without a ruler. */
    public static Step of(StepKind kind, HandRole hand) {
        return new Step(kind, hand, OptionalDouble.empty(), OptionalInt.empty());
    }

    /** A step at an end of the zone whose distance is known by ruler. */
    public static Step of(StepKind kind, HandRole hand, OptionalDouble mm) {
        return new Step(kind, hand, mm, OptionalInt.empty());
    }

    /** The pitch hand at a distance by ruler. */
    public static Step ruler(double mm) {
        return new Step(StepKind.RULER, HandRole.PITCH, OptionalDouble.of(mm), OptionalInt.empty());
    }

    /** The pitch hand where a note shall be. */
    public static Step note(int key) {
        return new Step(StepKind.NOTE, HandRole.PITCH, OptionalDouble.empty(), OptionalInt.of(key));
    }

    /**
     * One word for marks and messages: {@code near}, {@code open}, {@code level-far}, {@code ruler-250},
     * {@code note-A4}.
     */
    public String id() {
        if (kind == StepKind.RULER) {
            return RULER + Figures.text(mm.orElseThrow(), 1);
        }
        if (kind == StepKind.NOTE) {
            return NOTE + NoteName.of(key.orElseThrow());
        }
        boolean plain = hand == HandRole.PITCH || (kind != StepKind.NEAR && kind != StepKind.FAR);
        return plain ? kind.word() : hand.word() + "-" + kind.word();
    }

    /**
     * The step that {@link #id} names.
     *
     * @return empty when it names none
     */
    public static Optional<Step> byId(String id) {
        try {
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
                if (kind != StepKind.RULER && kind != StepKind.NOTE && hand == usualHand(kind, hand)) {
                    Step step = of(kind, hand);
                    if (step.id().equals(id)) {
                        return Optional.of(step);
                    }
                }
            }
        }
        return Optional.empty();
    }

    /** Rest is the pitch hand's step, all steps over light are the level hand's. */
    private static HandRole usualHand(StepKind kind, HandRole hand) {
        return switch (kind) {
            case REST, RULER, NOTE -> HandRole.PITCH;
            case NEAR, FAR -> hand;
            case OPEN, MID, COVERED -> HandRole.LEVEL;
        };
    }

    /** What was held, with the distance or the note that this step asked for. */
    Hold with(Hold hold) {
        return hold.asked(mm, key);
    }

    /** What to say to the player. */
    public String prompt() {
        String place = mm.isPresent() ? " (" + Figures.text(mm.getAsDouble(), 0) + " mm)" : "";
        return switch (kind) {
            case REST -> "take both hands away";
            case NEAR -> "hold the " + hand.word() + " hand still at the near end" + place;
            case FAR -> "hold the " + hand.word() + " hand still at the far end" + place;
            case OPEN -> "leave the light sensor open";
            case MID -> "hold the level hand still half-way over the light sensor";
            case COVERED -> "hold the level hand still where it shall be silent, close over the light sensor";
            case RULER -> "hold the pitch hand still at " + Figures.text(mm.orElseThrow(), 0) + " mm by the ruler";
            case NOTE -> "hold the pitch hand still where " + NoteName.of(key.orElseThrow()) + " shall be";
        };
    }
}
