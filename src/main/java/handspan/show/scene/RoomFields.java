package handspan.show.scene;

import handspan.wiring.evening.EveningView;
import java.util.List;

/** How the next room shall be measured. */
final class RoomFields {
    /** Answers whether reaches follow. */
    static final String WITH_REACHES = "yes";

    private static final String WITHOUT_REACHES = "no";

    private RoomFields() {}

    static List<Block.Field> of(EveningView evening, Showing showing) {
        return List.of(
                new Block.Field(
                        Ask.ROOM_NAME,
                        "Room",
                        evening.keeping().name(),
                        List.of(),
                        "",
                        "the name under which it is kept; a room of this name that is kept already goes into the"
                                + " history when this one is saved"),
                new Block.Field(
                        Ask.RULER_MM,
                        "By ruler",
                        showing.ruler(),
                        List.of(),
                        "mm",
                        "true distances, 3 to 9, rising and parted by commas, for example 100,200,300,400,500; empty"
                                + " for the two ends alone"),
                new Block.Field(
                        Ask.NOTES_BY_EAR,
                        "Or by ear",
                        showing.drafts().notes(),
                        List.of(),
                        "notes",
                        "3 to 9 notes that you hold where they shall be, from near to far, parted by commas, for"
                                + " example A3,E4,A4,E5,A5; the pitch curve is then fitted to them"),
                new Block.Field(
                        Ask.REACHES,
                        "Ten reaches after it",
                        showing.drafts().reaches() ? WITH_REACHES : WITHOUT_REACHES,
                        List.of(WITHOUT_REACHES, WITH_REACHES),
                        "",
                        "go straight to the place that is asked for, stop there, do not correct: measures your aim in"
                                + " mm; without it 6 mm are assumed"));
    }
}
