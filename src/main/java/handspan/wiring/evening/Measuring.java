package handspan.wiring.evening;

import java.util.List;
import java.util.Optional;

/**
 * Holds that are being taken, and what came of the last ones.
 *
 * @param task empty when none are
 * @param refusals why the last ones made no room; empty when they did
 * @param check what they say of the room, where it was checked
 * @param trouble why they could not be taken; empty when they could
 * @param told what they made of it, in words; empty where they made nothing
 */
public record Measuring(
        Optional<HoldTask> task, List<String> refusals, Optional<Checked> check, String trouble, List<String> told) {
    /** Copies the lists. */
    public Measuring {
        refusals = List.copyOf(refusals);
        told = List.copyOf(told);
    }

    /** Nothing is told. */
    public Measuring(Optional<HoldTask> task, List<String> refusals, Optional<Checked> check, String trouble) {
        this(task, refusals, check, trouble, List.of());
    }

    static Measuring nothing() {
        return new Measuring(Optional.empty(), List.of(), Optional.empty(), "");
    }

    static Measuring told(List<String> words) {
        return new Measuring(Optional.empty(), List.of(), Optional.empty(), "", words);
    }
}
