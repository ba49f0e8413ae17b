package handspan.profile;

import handspan.music.practice.PracticeRun;
import java.util.ArrayList;
import java.util.List;

/**
 * How a player's practice goes on.
 *
 * @param name what the player is called, also the base name of the file
 * @param runs oldest first, at most {@value #MOST_RUNS}
 */
public record Player(String name, List<PracticeRun> runs) {
    /** Most runs that are kept: a run on most days of a year. */
    public static final int MOST_RUNS = 200;

    /** Copies the list. */
    public Player {
        runs = List.copyOf(runs);
        if (runs.size() > MOST_RUNS) {
            throw new IllegalArgumentException(runs.size() + " runs (at most " + MOST_RUNS + ")");
        }
    }

    /** The same player with one run more; the oldest goes where there are too many. */
    public Player and(PracticeRun run) {
        List<PracticeRun> more = new ArrayList<>(runs);
        more.add(run);
        return new Player(name, more.subList(Math.max(0, more.size() - MOST_RUNS), more.size()));
    }
}
