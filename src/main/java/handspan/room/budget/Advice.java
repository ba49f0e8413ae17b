package handspan.room.budget;

import handspan.music.tuning.Scale;
import handspan.music.tuning.Tuning;
import handspan.room.Aim;
import handspan.room.Room;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a room can hold for a player, and what would help.
 *
 * @param aim of the player
 * @param mostMiss01 largest share of reaches for the worst note that may miss
 * @param words all in a sentence
 * @param scales each with its widest range
 * @param chosen the chosen tuning, note by note
 * @param help what would lower the chance of the chosen tuning's worst note, the best first
 */
public record Advice(
        Aim aim, double mostMiss01, String words, List<ForScale> scales, Playable chosen, List<Help> help) {
    /**
     * The advice on one scale.
     *
     * @param scale asked about
     * @param widest range that it can be played over; empty when there is none
     */
    public record ForScale(Scale scale, Optional<Playable> widest) {}

    /**
     * One thing that would help.
     *
     * @param what in words
     * @param worstNote the note that would then be missed most
     * @param miss01 and how often
     */
    public record Help(String what, String worstNote, double miss01) {}

    /** Copies the lists. */
    public Advice {
        scales = List.copyOf(scales);
        help = List.copyOf(help);
    }

    /** What would help in words, a line each, what helps most first. */
    public List<String> helpWords() {
        String now = chosen.worstName() + ", missed by "
                + NoteChance.percent(chosen.worst().miss01());
        if (help.isEmpty()) {
            return List.of("nothing that is known of would lower the chance of the worst note, " + now);
        }
        List<String> lines = new ArrayList<>();
        Help best = help.get(0);
        lines.add("worst note " + now + "; what helps most: " + best.what() + ", then "
                + NoteChance.percent(best.miss01()));
        help.stream().skip(1).forEach(each -> lines.add("  " + each.what() + ": " + NoteChance.percent(each.miss01())));
        return lines;
    }

    /**
     * Why a tuning asks too much of a player in a room, by the usual limit.
     *
     * @return empty when its worst note is hit often enough
     */
    public static Optional<String> warning(Room room, Tuning tuning, Aim aim) {
        return Adviser.of(room, aim).warning(tuning);
    }
}
