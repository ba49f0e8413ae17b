package handspan.music.send;

import java.util.ArrayList;
import java.util.List;

/**
 * What an instrument sends and where to.
 *
 * @param lines one message each, in the order of the bundle
 * @param targets every one gets every frame
 */
public record SendPlan(List<SendLine> lines, List<SendTarget> targets) {
    /** Copies both lists. */
    public SendPlan {
        lines = List.copyOf(lines);
        targets = List.copyOf(targets);
    }

    /** Every value at its default address. */
    public static SendPlan byDefault(String instrumentName, List<SendTarget> targets) {
        List<SendLine> lines = new ArrayList<>();
        for (SendValue value : SendValue.values()) {
            lines.add(SendLine.byDefault(value, instrumentName));
        }
        return new SendPlan(lines, targets);
    }

    /** The same lines to other targets. */
    public SendPlan to(List<SendTarget> otherTargets) {
        return new SendPlan(lines, otherTargets);
    }
}
