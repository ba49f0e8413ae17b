package handspan.room.calibrate;

import handspan.room.HandRole;
import handspan.room.StepKind;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One thing the player is asked to do.
 *
 * @param kind what
 * @param hand with which hand
 * @param mm true distance by ruler, where the player gave it
 */
public record Step(StepKind kind, HandRole hand, OptionalDouble mm) {
    /** A step without a ruler. */
    public static Step of(StepKind kind, HandRole hand) {
        return new Step(kind, hand, OptionalDouble.empty());
    }

    /** One word for marks and messages: {@code near}, {@code open}, {@code level-far}. */
    public String id() {
        boolean plain = hand == HandRole.PITCH || (kind != StepKind.NEAR && kind != StepKind.FAR);
        return plain ? kind.word() : hand.word() + "-" + kind.word();
    }

    /**
     * The step, without a ruler, that {@link #id} names.
     *
     * @return empty when it names none
     */
    public static Optional<Step> byId(String id) {
        for (StepKind kind : StepKind.values()) {
            for (HandRole hand : HandRole.values()) {
                Step step = of(kind, hand);
                if (step.id().equals(id) && step.hand() == usualHand(kind, hand)) {
                    return Optional.of(step);
                }
            }
        }
        return Optional.empty();
    }

    /** Rest is the pitch hand's step, all steps over light are the level hand's. */
    private static HandRole usualHand(StepKind kind, HandRole hand) {
        return switch (kind) {
            case REST -> HandRole.PITCH;
            case NEAR, FAR -> hand;
            case OPEN, MID, COVERED -> HandRole.LEVEL;
        };
    }

    /** What to say to the player. */
    public String prompt() {
        String place = mm.isPresent() ? " (" + handspan.number.units.Figures.text(mm.getAsDouble(), 0) + " mm)" : "";
        return switch (kind) {
            case REST -> "take both hands away";
            case NEAR -> "hold the " + hand.word() + " hand still at the near end" + place;
            case FAR -> "hold the " + hand.word() + " hand still at the far end" + place;
            case OPEN -> "leave the light sensor open";
            case MID -> "hold the level hand still half-way over the light sensor";
            case COVERED -> "hold the level hand still where it shall be silent, close over the light sensor";
        };
    }
}
