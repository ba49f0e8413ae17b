package handspan.show.scene;

import handspan.profile.KeptRoom;
import handspan.profile.RoomComparison.Difference;
import handspan.profile.RoomHistory;
import handspan.profile.RoomProfile;
import handspan.room.Room;
import handspan.wiring.evening.Compared;
import handspan.wiring.evening.EveningView;
import handspan.wiring.evening.HoldPurpose;
import handspan.wiring.evening.Keeping;
import handspan.wiring.evening.RoomLook;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The rooms that are kept; one of them more closely; what differs between two. */
final class ShelfScene {
    /** Where a long difference is broken into rows. */
    private static final String BREAKS = "(?<=;) |(?<=, )(?=then )| (?=at places )";

    private ShelfScene() {}

    static Page page(EveningView evening) {
        Keeping keeping = evening.keeping();
        List<Block> blocks = new ArrayList<>();
        if (!keeping.trouble().isEmpty()) {
            blocks.add(new Block.Words(Tone.BAD, WindowWords.sentence(keeping.trouble())));
        }
        if (!keeping.news().isEmpty()) {
            blocks.add(new Block.Words(Tone.GOOD, WindowWords.sentence(keeping.news())));
        }
        if (keeping.unsaved()) {
            blocks.add(new Block.Words(Tone.LOOK, "Room '" + keeping.held() + "' is not saved."));
        }
        Optional<RoomLook> look = keeping.look();
        if (look.isEmpty()) {
            all(blocks, keeping);
        } else if (look.get().compared().isPresent()) {
            compared(blocks, look.get().history().room(), look.get().compared().get());
        } else {
            one(blocks, evening, look.get().history());
        }
        return new Page(Station.SHELF, blocks);
    }

    private static void all(List<Block> blocks, Keeping keeping) {
        String held = keeping.held();
        List<Block.Row> rows = keeping.kept().stream()
                .map(room -> row(room, held, keeping.unsaved()))
                .toList();
        blocks.add(
                rows.isEmpty()
                        ? new Block.Words(Tone.PLAIN, "No room is kept yet.")
                        : new Block.Table("rooms", List.of("room", "instrument", "taken", ""), rows));
        keeping.kept().stream()
                .filter(room -> room.profile().isEmpty())
                .forEach(room -> blocks.add(new Block.Words(
                        Tone.BAD, "Room '" + room.name() + "' can't be read: " + WindowWords.of(room.fault()))));
        blocks.add(new Block.Offers(List.of(
                Offer.next("Save", "ctrl S", Wish.Plain.SAVE, "keeps the room; 20 versions before it stay")
                        .unless(
                                keeping.profile().isEmpty()
                                        ? "there is no room yet"
                                        : keeping.unsaved() ? "" : "nothing has changed since it was kept"),
                Offer.plain("Look again", "F5", Wish.Plain.LIST_ROOMS, "lists the rooms that are kept now"))));
        if (!rows.isEmpty()) {
            blocks.add(new Block.Words(
                    Tone.QUIET,
                    "Choose a row and press Enter, or click it twice: then it can be loaded, compared, and taken back to"
                            + " what it was."));
        }
    }

    private static Block.Row row(KeptRoom room, String held, boolean unsaved) {
        String state = room.profile().isEmpty()
                ? "can't be read"
                : room.name().equals(held) ? (unsaved ? "in hand, changed" : "in hand") : "";
        return new Block.Row(
                List.of(
                        room.name(),
                        room.profile()
                                .map(profile -> profile.room().instrument().name())
                                .orElse(""),
                        room.profile()
                                .map(profile -> moment(profile.room().calibratedAt()))
                                .orElse(""),
                        state),
                Optional.of(new Wish.Look(room.name())),
                "Enter looks at it more closely; times in UTC");
    }

    private static void one(List<Block> blocks, EveningView evening, RoomHistory history) {
        Keeping keeping = evening.keeping();
        String name = history.room();
        boolean held = keeping.held().equals(name);
        blocks.add(
                history.today().isPresent()
                        ? new Block.Words(Tone.PLAIN, words(history.today().get(), held, keeping.unsaved()))
                        : new Block.Words(
                                Tone.BAD, "Room '" + name + "' can't be read: " + WindowWords.of(history.fault())));
        List<Offer> offers = new ArrayList<>();
        offers.add(new Offer(
                held ? "Load it again" : "Load",
                "ctrl ENTER",
                new Wish.Load(name),
                "takes it in hand: its zones, tunings, level and targets",
                history.today().isPresent() ? "" : "it can't be read",
                held ? Offer.Weight.PLAIN : Offer.Weight.NEXT));
        if (held) {
            offers.add(new Offer(
                    "Does it fit?",
                    "ctrl K",
                    new Wish.Measure(HoldPurpose.CHECK),
                    "both ends and the open light again, some 10 s; says how many cents and dB it would be off",
                    evening.snapshot().isEmpty() ? "no instrument is open: arrive first" : "",
                    Offer.Weight.NEXT));
        }
        offers.add(Offer.plain("All rooms", "BACK_SPACE", Wish.RoomAct.STEP_BACK, "back to the list"));
        blocks.add(new Block.Offers(offers));
        List<Block.Row> rows = others(keeping, history);
        blocks.add(
                rows.isEmpty()
                        ? new Block.Words(Tone.QUIET, "There is nothing yet to compare it with.")
                        : new Block.Table(
                                "compare with", List.of("compare with", "saved or taken", "what is known"), rows));
        if (!rows.isEmpty()) {
            blocks.add(new Block.Words(
                    Tone.QUIET,
                    "Enter says what differs, in mm, cents and dB; an earlier version can then be taken back. Times in"
                            + " UTC."));
        }
    }

    private static String words(RoomProfile profile, boolean held, boolean unsaved) {
        Room room = profile.room();
        int tunings = profile.tunings().size();
        return "Room '" + room.name() + "': " + room.instrument().name() + ", taken " + moment(room.calibratedAt())
                + " UTC, " + (tunings == 1 ? "one tuning" : tunings + " tunings")
                + (held ? (unsaved ? "; in hand, changed since it was kept" : "; in hand") : "");
    }

    /** What it can be compared with: its own earlier versions first, then what is in hand, then other rooms. */
    private static List<Block.Row> others(Keeping keeping, RoomHistory history) {
        List<Block.Row> rows = new ArrayList<>();
        for (RoomHistory.Entry entry : history.entries()) {
            boolean reads = entry.version().profile().isPresent();
            rows.add(new Block.Row(
                    List.of("version " + entry.version().number(), moment(entry.savedAt()), entry.words()),
                    reads ? Optional.of(new Wish.CompareVersion(entry.version().number())) : Optional.empty(),
                    reads ? "Enter says what differs now, and offers to take it back" : entry.words()));
        }
        if (history.today().isEmpty()) {
            return rows;
        }
        if (keeping.profile().isPresent()
                && (keeping.unsaved() || !keeping.held().equals(history.room()))) {
            rows.add(new Block.Row(
                    List.of("the room in hand", "", "'" + keeping.held() + "' as it is now, saved or not"),
                    Optional.of(Wish.RoomAct.COMPARE_WITH_HAND),
                    "Enter says what differs"));
        }
        keeping.kept().stream()
                .filter(room -> room.profile().isPresent() && !room.name().equals(history.room()))
                .forEach(room -> rows.add(new Block.Row(
                        List.of(
                                "room '" + room.name() + "'",
                                moment(room.profile().orElseThrow().room().calibratedAt()),
                                room.profile().orElseThrow().room().instrument().name()),
                        Optional.of(new Wish.CompareWith(room.name())),
                        "Enter says what differs")));
        return rows;
    }

    private static void compared(List<Block> blocks, String room, Compared compared) {
        blocks.add(new Block.Words(
                Tone.PLAIN,
                "From " + compared.from() + " to " + compared.to()
                        + (compared.comparison().differences().isEmpty() ? " nothing differs." : ":")));
        List<Block.Row> rows = new ArrayList<>();
        for (Difference difference : compared.comparison().differences()) {
            String what = difference.what();
            for (String part : difference.words().split(BREAKS, -1)) {
                rows.add(new Block.Row(List.of(what, part), Optional.empty(), difference.words()));
                what = "";
            }
        }
        if (!rows.isEmpty()) {
            blocks.add(new Block.Table("differences", List.of("what", "from one to the other"), rows));
        }
        List<Offer> offers = new ArrayList<>();
        compared.version()
                .ifPresent(number -> offers.add(Offer.plain(
                        "Take version " + number + " back",
                        "ctrl B",
                        new Wish.Restore(room, number),
                        "what the room is now becomes the newest of its earlier versions")));
        offers.add(Offer.next("Back", "BACK_SPACE", Wish.RoomAct.STEP_BACK, "to the room that was compared"));
        blocks.add(new Block.Offers(offers));
    }

    /** ISO 8601 as people read it: to the minute. */
    static String moment(String iso) {
        return iso.length() < 16 ? iso : iso.substring(0, 10) + " " + iso.substring(11, 16);
    }
}
