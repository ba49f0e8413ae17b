package handspan.command;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/**
 * Lines that stay in place on a terminal, with a line below them for what is typed, which is never written over. By the
 * control functions of ECMA-48 (cursor position, erase) and the terminals' usual save and restore of the cursor (DECSC,
 * DECRC).
 */
final class TerminalTable {
    /** What a terminal has that says nothing of its size (common practice). */
    private static final int USUAL_ROWS = 24;

    private static final int USUAL_COLUMNS = 80;

    private static final String ESCAPE = "\u001b";
    private static final String HOME = ESCAPE + "[H";
    private static final String ERASE_ALL = ESCAPE + "[2J";
    private static final String ERASE_REST = ESCAPE + "[J";
    private static final String ERASE_LINE = ESCAPE + "[K";
    private static final String SAVE = ESCAPE + "7";
    private static final String RESTORE = ESCAPE + "8";

    private final PrintStream out;
    private final String prompt;
    private boolean drawn;

    TerminalTable(PrintStream out, String prompt) {
        this.out = out;
        this.prompt = prompt;
    }

    /**
     * Whether standard input and output are a terminal that can move its cursor; asked of the system's own
     * {@code test}, so that a system without it has none.
     *
     * @param kind of the terminal, as the system names it; null where it does not
     */
    static boolean isThere(@Nullable String kind) {
        if (kind == null || kind.equals("dumb")) {
            return false;
        }
        try {
            Process test = new ProcessBuilder("sh", "-c", "test -t 0 && test -t 1")
                    .inheritIO()
                    .start();
            return test.waitFor() == 0;
        } catch (IOException e) {
            return false;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    /** Rows and columns of the terminal that this program was started in. */
    static int[] size() {
        try {
            Process stty = new ProcessBuilder("stty", "size")
                    .redirectInput(ProcessBuilder.Redirect.INHERIT)
                    .start();
            String[] words = new String(stty.getInputStream().readAllBytes(), StandardCharsets.US_ASCII)
                    .strip()
                    .split(" ", -1);
            stty.waitFor(1, TimeUnit.SECONDS);
            int rows = Integer.parseInt(words[0]);
            int columns = Integer.parseInt(words[1]);
            return rows > 0 && columns > 0 ? new int[] {rows, columns} : usual();
        } catch (IOException | NumberFormatException | IndexOutOfBoundsException e) {
            return usual();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return usual();
        }
    }

    private static int[] usual() {
        return new int[] {USUAL_ROWS, USUAL_COLUMNS};
    }

    /** Something was typed: the next time all is drawn anew. */
    void anew() {
        drawn = false;
    }

    /** Draws the lines; always as many. */
    void draw(List<String> lines) {
        StringBuilder text = new StringBuilder(drawn ? SAVE + HOME : HOME + ERASE_ALL + HOME);
        lines.forEach(line -> text.append(line).append(ERASE_LINE).append("\r\n"));
        text.append(drawn ? RESTORE : prompt + ERASE_REST);
        drawn = true;
        out.print(text);
        out.flush();
    }

    /** Leaves the table standing and goes on below it. */
    void end() {
        out.println();
        out.flush();
    }
}
