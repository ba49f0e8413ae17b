package handspan.room.calibrate;

import handspan.number.fit.SteadyValue;
import handspan.room.HandRole;
import handspan.room.Hold;
import handspan.room.StepKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The steps captured so far, in their order. Owned by one thread. */
final class Captures {
    /**
     * A step that is done.
     *
     * @param hold empty for a rest without any reading
     * @param held what it was made from; empty with the hold
     */
    record Captured(Step step, Optional<Hold> hold, Optional<HoldJudge.Held> held) {}

    private final List<Captured> done = new ArrayList<>();

    void add(Captured captured) {
        done.add(captured);
    }

    /** Drops the last; there must be one. */
    Captured removeLast() {
        return done.remove(done.size() - 1);
    }

    int size() {
        return done.size();
    }

    boolean isEmpty() {
        return done.isEmpty();
    }

    /** A rest is not taken again by a sign of the hand that has just come. */
    boolean lastIsAPlace() {
        return !done.isEmpty() && done.get(done.size() - 1).step().kind() != StepKind.REST;
    }

    /** This hand's last hold. */
    Optional<SteadyValue> lastOf(HandRole hand) {
        for (int i = done.size() - 1; i >= 0; i--) {
            if (done.get(i).step().hand() == hand) {
                return done.get(i).held().map(HoldJudge.Held::value);
            }
        }
        return Optional.empty();
    }

    List<Hold> holds() {
        return done.stream().flatMap(captured -> captured.hold().stream()).toList();
    }
}
