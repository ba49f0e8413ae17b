package handspan.wiring.evening;

import handspan.profile.KeptRoom;
import handspan.profile.ProfileException;
import handspan.profile.ProfileFolder;
import handspan.profile.Restored;
import handspan.profile.RoomComparison;
import handspan.profile.RoomHistory;
import handspan.profile.RoomProfile;
import handspan.wiring.InstrumentShelf;
import java.util.List;
import java.util.Optional;

/** The rooms that are kept: listed, taken in hand, compared, brought back as they were. */
public final class Shelf {
    private final EveningState state;
    private final Turns turns;
    private final SoundOut sound;
    private final RoomInHand hand;
    private final ProfileFolder folder;

    Shelf(EveningState state, Turns turns, SoundOut sound, RoomInHand hand, ProfileFolder folder) {
        this.state = state;
        this.turns = turns;
        this.sound = sound;
        this.hand = hand;
        this.folder = folder;
    }

    /** Lists the rooms that are kept; those that can't be read among them. */
    public void list() {
        turns.add("looking for rooms", state::keepingTrouble, this::listNow);
    }

    private void listNow() throws ProfileException {
        List<KeptRoom> rooms = folder.kept();
        state.change(seen -> seen.with(seen.keeping().listing(rooms)));
    }

    /** Takes a kept room in hand; what was not saved of the one before is gone. */
    public void load(String name) {
        turns.add("loading " + name, state::keepingTrouble, () -> {
            RoomProfile loaded = folder.load(name);
            String news =
                    new InstrumentShelf(folder).rebuiltSince(loaded.room()).orElse("room '" + name + "' is loaded");
            hold(loaded, news);
        });
    }

    private void hold(RoomProfile loaded, String news) {
        sound.endPlaying();
        state.change(seen -> seen.with(seen.keeping().holding(loaded, false, news))
                .with(seen.sounding().to(loaded.send().targets()))
                .with(Measuring.nothing()));
        hand.think();
    }

    /** Looks at a kept room more closely: what it is and was. */
    public void look(String name) {
        turns.add("looking at " + name, state::keepingTrouble, () -> lookNow(name));
    }

    private void lookNow(String name) throws ProfileException {
        RoomHistory history = RoomHistory.of(folder, name);
        show(Optional.of(new RoomLook(history, Optional.empty())));
    }

    private void show(Optional<RoomLook> look) {
        state.change(seen -> seen.with(seen.keeping().looking(look)));
    }

    /** Looks one step less closely: from a comparison at the room, from the room at all of them. */
    public void stepBack() {
        state.change(seen -> seen.with(seen.keeping()
                .looking(seen.keeping()
                        .look()
                        .filter(look -> look.compared().isPresent())
                        .map(look -> new RoomLook(look.history(), Optional.empty())))));
    }

    /** Compares the room that is looked at with another kept one. */
    public void compareWith(String other) {
        turns.add("comparing", state::keepingTrouble, () -> {
            RoomProfile to = folder.load(other);
            compare("room '" + other + "'", to);
        });
    }

    /** Compares the room that is looked at with the one in hand, as it is now, saved or not. */
    public void compareWithHand() {
        turns.add("comparing", state::keepingTrouble, () -> compare("the room in hand", state.needProfile()));
    }

    private void compare(String toWords, RoomProfile to) {
        RoomLook look = needLook();
        RoomProfile from = look.history()
                .today()
                .orElseThrow(() -> new IllegalArgumentException(look.history().fault()));
        String fromWords = "room '" + look.history().room() + "'";
        show(Optional.of(new RoomLook(
                look.history(),
                Optional.of(new Compared(fromWords, toWords, RoomComparison.of(from, to), Optional.empty())))));
    }

    /** Compares an earlier version of the room that is looked at with what it is now. */
    public void compareVersion(int number) {
        turns.add("comparing", state::keepingTrouble, () -> {
            RoomLook look = needLook();
            String room = look.history().room();
            RoomProfile before = folder.version(room, number);
            RoomProfile now = look.history().today().orElse(before);
            String words = look.history().today().isPresent() ? "room '" + room + "'" : "nothing that can be read";
            show(Optional.of(new RoomLook(
                    look.history(),
                    Optional.of(new Compared(
                            "version " + number, words, RoomComparison.of(before, now), Optional.of(number))))));
        });
    }

    /** Brings an earlier version of a room back; where it is the room in hand, it is taken in hand anew. */
    public void restore(String room, int number) {
        turns.add("bringing back version " + number, state::keepingTrouble, () -> {
            Restored restored = folder.restore(room, number);
            String news = String.join("; ", restored.words(number));
            if (state.view().keeping().held().equals(room)) {
                hold(restored.now(), news);
            }
            listNow();
            lookNow(room);
            state.change(seen -> seen.with(seen.keeping().told(news)));
        });
    }

    private RoomLook needLook() {
        return state.view()
                .keeping()
                .look()
                .orElseThrow(() -> new IllegalArgumentException("no room is looked at: choose one first"));
    }
}
