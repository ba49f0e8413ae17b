package handspan.command;

import handspan.room.budget.LatencyBudget;
import java.util.ArrayList;
import java.util.List;

/** A latency budget in words: its terms, then what would make it less. */
final class LatencyView {
    private LatencyView() {}

    static List<String> lines(String title, LatencyBudget budget) {
        List<String> lines = new ArrayList<>();
        lines.add(title + ": " + budget.words());
        budget.advice().forEach(advice -> lines.add("  advice: " + advice));
        return lines;
    }
}
