package handspan.command;

import handspan.number.units.Nanos;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Where an ensemble is shown: on a terminal a table that stays in place with the latest words below it, elsewhere the
 * words as they come and the table now and then. Words may come from any thread.
 */
final class EnsembleStage {
    private static final int WORDS = 6;
    private static final int FEWEST_WORDS = 2;

    /** Title, a line above the words and one below, the prompt, one where Enter goes. */
    private static final int OTHER_LINES = 5;

    /** Fast enough for troubles, slow enough to be read (this project's own choice). */
    private static final long REDRAW_NANOS = Nanos.PER_SECOND / 2;

    private static final long REPEAT_NANOS = 10 * Nanos.PER_SECOND;
    private static final int USUAL_COLUMNS = 200;
    private static final String KEYS =
            "keys, then Enter: m all closed or open, 2 m the second one, 2 t its next tuning, q quit";

    private final Talk talk;
    private final @Nullable TerminalTable terminal;
    private final int columns;
    private final Pulse pulse;
    private final Deque<String> latest = new ArrayDeque<>();
    private boolean typed;
    private boolean ended;

    private EnsembleStage(Talk talk, @Nullable TerminalTable terminal, int words, int columns) {
        this.columns = columns;
        this.terminal = terminal;
        this.pulse = new Pulse(terminal == null ? REPEAT_NANOS : REDRAW_NANOS);
        this.talk = terminal == null ? talk : talk.into(line -> keep(line, words));
        for (int i = 0; i < words; i++) {
            latest.add("");
        }
    }

    /**
     * A stage as there is room for.
     *
     * @param instruments how many lines the table has
     */
    static EnsembleStage of(Talk talk, Handspan program, int instruments) {
        if (!talk.isJson() && program.isOnTerminal()) {
            int[] size = TerminalTable.size();
            int words = Math.min(WORDS, size[0] - instruments - 1 - OTHER_LINES);
            if (words >= FEWEST_WORDS) {
                return new EnsembleStage(talk, new TerminalTable(program.out(), "> "), words, size[1]);
            }
        }
        return new EnsembleStage(talk, null, 0, USUAL_COLUMNS);
    }

    /** Where words about what happens go. */
    Talk talk() {
        return talk;
    }

    private synchronized void keep(String line, int words) {
        if (ended) {
            return;
        }
        latest.addLast(line.replaceAll("\\s+", " "));
        while (latest.size() > words) {
            latest.removeFirst();
        }
        typed = true;
    }

    /** A key was typed: the line where keys are typed is emptied. */
    synchronized void typed() {
        typed = true;
        if (terminal != null) {
            terminal.anew();
        }
    }

    /** Shows how all stand, where it is time to. */
    synchronized void show(List<EnsembleTable.Row> rows, double seconds, long nowNanos) {
        boolean due = pulse.isDue(nowNanos);
        if (!due && !(typed && terminal != null)) {
            return;
        }
        typed = false;
        List<String> table = EnsembleTable.lines(rows, columns);
        if (terminal == null) {
            if (!talk.isJson()) {
                table.forEach(talk::say);
            }
            return;
        }
        List<String> lines = new ArrayList<>();
        lines.add(EnsembleTable.cut(rows.size() + " instruments, " + Math.round(seconds) + " s", columns));
        lines.addAll(table);
        lines.add("");
        latest.forEach(line -> lines.add(EnsembleTable.cut(line, columns)));
        lines.add(EnsembleTable.cut(KEYS, columns));
        terminal.draw(lines);
    }

    /** No more is shown. */
    synchronized void end() {
        if (terminal != null && !ended) {
            terminal.end();
        }
        ended = true;
    }
}
