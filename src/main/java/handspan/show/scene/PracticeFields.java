package handspan.show.scene;

import handspan.music.practice.Asking;
import handspan.wiring.evening.NotePractice;
import handspan.wiring.evening.Practice;
import java.util.Arrays;
import java.util.List;

/** How the next notes are asked for. */
final class PracticeFields {
    private static final String SHOWN = "shown";
    private static final String HIDDEN = "hidden";

    private PracticeFields() {}

    static List<Block.Field> of(Practice practice) {
        return List.of(
                new Block.Field(
                        Ask.COURSE_NOTES,
                        "Notes",
                        practice.wish().notes(),
                        List.of(),
                        "",
                        "how many, from near ones to far ones, or which: C4,E4,G4"),
                new Block.Field(
                        Ask.ASKED_BY,
                        "Asked by",
                        practice.wish().asking().word(),
                        Arrays.stream(Asking.values()).map(Asking::word).toList(),
                        "",
                        "name: it is shown; sound: the note sounds from this machine (monitors low first), and its name is"
                                + " not shown"),
                new Block.Field(
                        Ask.WAY_SHOWN,
                        "The way to it",
                        practice.wish().help() ? SHOWN : HIDDEN,
                        List.of(SHOWN, HIDDEN),
                        "",
                        "how many mm and cents are still to go; only reaches without it tell your aim"),
                new Block.Field(
                        Ask.PLAYER,
                        "Player",
                        practice.player(),
                        List.of(),
                        "",
                        "under this name runs are kept and compared, and notes that were missed come more often; empty"
                                + " to keep nothing"));
    }

    /** What a player says of the next run. */
    static void said(Ask what, String value, NotePractice practice) {
        switch (what) {
            case COURSE_NOTES -> practice.want(wish -> wish.through(value));
            case ASKED_BY -> practice.want(wish -> wish.asked(Asking.parse(value)));
            case WAY_SHOWN -> practice.want(wish -> wish.helped(value.equals(SHOWN)));
            default -> practice.of(value);
        }
    }
}
