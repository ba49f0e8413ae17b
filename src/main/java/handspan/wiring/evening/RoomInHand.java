package handspan.wiring.evening;

import handspan.music.send.SendTarget;
import handspan.music.tuning.Tuning;
import handspan.profile.KeptRoom;
import handspan.profile.ProfileException;
import handspan.profile.ProfileFolder;
import handspan.profile.RoomHistory;
import handspan.profile.RoomInWords;
import handspan.profile.RoomProfile;
import handspan.room.budget.Adviser;
import handspan.room.budget.FeelBudget;
import handspan.room.budget.StepsBudget;
import handspan.wiring.NewRoom;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** The room that is worked on in an evening. */
public final class RoomInHand {
    private final EveningState state;
    private final Turns turns;
    private final SoundOut sound;
    private final ProfileFolder folder;

    RoomInHand(EveningState state, Turns turns, SoundOut sound, ProfileFolder folder) {
        this.state = state;
        this.turns = turns;
        this.sound = sound;
        this.folder = folder;
    }

    ProfileFolder folder() {
        return folder;
    }

    /** What the next room shall be called. */
    public void name(String name) {
        state.change(seen -> seen.with(seen.keeping().named(name)));
    }

    /** Keeps the room that is worked on, under its name; what was there before goes into its history. */
    public void save() {
        turns.add("saving", state::keepingTrouble, () -> {
            RoomProfile profile = state.needProfile();
            new NewRoom(folder, profile.room().name(), null).keep(profile);
            String news = "saved as " + folder.fileOf(profile.room().name());
            List<KeptRoom> rooms = folder.kept();
            // what was changed meanwhile is not in the file
            state.change(seen -> seen.with((seen.keeping().profile().equals(Optional.of(profile))
                            ? seen.keeping().holding(profile, false, news)
                            : seen.keeping())
                    .listing(rooms)));
            lookAnew(profile.room().name());
        });
    }

    /** Whoever looks at the room more closely sees the version that has come by a save. */
    private void lookAnew(String name) throws ProfileException {
        Optional<RoomLook> look = state.view()
                .keeping()
                .look()
                .filter(before -> before.history().room().equals(name));
        if (look.isPresent()) {
            RoomLook anew =
                    new RoomLook(RoomHistory.of(folder, name), look.get().compared());
            state.change(seen -> seen.with(seen.keeping().seeing(anew)));
        }
    }

    /** Takes a room in hand that has just been made. */
    void take(RoomProfile made) {
        state.change(seen -> seen.with(seen.keeping().holding(made, true, "")));
        think();
    }

    /**
     * Changes the room that is worked on; what plays follows at once.
     *
     * @return why not, where that can't be; nothing changes then
     */
    public Optional<String> change(String what, UnaryOperator<RoomProfile> changed) {
        return change(what, changed, name -> name);
    }

    /** One change at a time: what a player sets and what a run of practice finds must not lose each other. */
    private synchronized Optional<String> change(
            String what, UnaryOperator<RoomProfile> changed, UnaryOperator<String> renamed) {
        try {
            RoomProfile before = state.needProfile();
            RoomProfile after = changed.apply(before);
            if (!after.equals(before)) {
                state.change(seen -> seen.with(seen.keeping().holding(after, true, what)));
                think();
                sound.retune(after.tunings(), renamed);
                if (!after.level().equals(before.level())) {
                    sound.relevel(after.level());
                }
            }
            return Optional.empty();
        } catch (IllegalArgumentException e) {
            return Optional.of(String.valueOf(e.getMessage()));
        }
    }

    // ---- its tunings ----

    /** Works on another of its tunings; what plays does not change by that. */
    public Optional<String> edit(String tuning) {
        return named(tuning).map(Optional::of).orElseGet(() -> {
            state.change(seen -> seen.with(seen.keeping().editing(tuning)));
            think();
            return Optional.empty();
        });
    }

    /** That there is no tuning of a name, in words; empty when there is. */
    private Optional<String> named(String tuning) {
        try {
            state.needProfile().tuning(tuning);
            return Optional.empty();
        } catch (IllegalArgumentException e) {
            return Optional.of(String.valueOf(e.getMessage()));
        }
    }

    /** Adds a tuning like the one that is worked on, and works on it. */
    public Optional<String> addTuning() {
        Optional<Tuning> like = state.view().keeping().edited();
        if (like.isEmpty()) {
            return Optional.of("there is no room yet");
        }
        String name = free(like.get().name());
        Optional<String> refusal = change(
                "tuning '" + name + "' is new",
                profile -> profile.with(like.get().named(name)));
        return refusal.isPresent() ? refusal : edit(name);
    }

    private String free(String like) {
        List<String> taken =
                state.needProfile().tunings().stream().map(Tuning::name).toList();
        int number = 2;
        while (taken.contains(like + " " + number)) {
            number++;
        }
        return like + " " + number;
    }

    /** Calls the tuning that is worked on by another name. */
    public Optional<String> renameTuning(String other) {
        String now = editedName();
        Optional<String> refusal = change(
                "tuning '" + now + "' is called '" + other + "'",
                profile -> profile.renaming(now, other),
                name -> name.equals(now) ? other : name);
        return refusal.isPresent() ? refusal : edit(other);
    }

    /** Takes the tuning that is worked on out of the room; where it plays, the first one plays on. */
    public Optional<String> removeTuning() {
        String now = editedName();
        Optional<String> refusal = change("tuning '" + now + "' is removed", profile -> profile.without(now));
        if (refusal.isEmpty()) {
            state.change(seen -> seen.with(seen.keeping().editing("")));
            think();
        }
        return refusal;
    }

    /** Makes the tuning that is worked on the first, which plays unless another is chosen. */
    public Optional<String> startWithTuning() {
        String now = editedName();
        Optional<String> refusal = change("tuning '" + now + "' is the first", profile -> profile.startingWith(now));
        return refusal.isPresent() ? refusal : edit(now);
    }

    /** Changes the tuning that is worked on. */
    public Optional<String> changeTuning(UnaryOperator<Tuning> changed) {
        return change(
                "tuning '" + editedName() + "' has changed",
                profile -> profile.with(changed.apply(profile.tuning(editedName()))));
    }

    private String editedName() {
        return state.view().keeping().edited().map(Tuning::name).orElse("");
    }

    /** Where the room, or the next one, sends. */
    public void sendTo(List<String> targets) {
        try {
            List<SendTarget> parsed = new ArrayList<>();
            targets.forEach(target -> parsed.add(SendTarget.parse(target.strip())));
            state.change(seen -> seen.with(seen.sounding().to(parsed)));
            if (state.view().keeping().profile().isPresent()) {
                change(
                                "sends to " + String.join(", ", targets),
                                profile -> profile.with(profile.send().to(parsed)))
                        .ifPresent(state::soundTrouble);
            }
        } catch (IllegalArgumentException e) {
            state.soundTrouble(String.valueOf(e.getMessage()));
        }
    }

    /** Works out what the room can hold, once for several changes in a row. */
    void think() {
        turns.add("working out what this room can hold", state::keepingTrouble, () -> {
            Keeping keeping = state.view().keeping();
            Optional<Tuning> edited = keeping.edited();
            if (edited.isEmpty()
                    || state.view().thought().speaksOf(keeping.profile().get(), edited.get())) {
                return;
            }
            RoomProfile profile = keeping.profile().get();
            Tuning tuning = edited.get();
            Adviser adviser = Adviser.of(profile.room(), profile.room().aim());
            String advice = adviser.sentence(tuning);
            String warning = StepsBudget.refusal(profile.room(), tuning)
                    .or(() -> adviser.warning(tuning))
                    .orElse("");
            String feel = FeelBudget.of(profile.room(), tuning).words();
            List<String> measured = new ArrayList<>(RoomInWords.hands(profile.room()));
            measured.addAll(RoomInWords.promises(profile.room(), tuning));
            state.change(
                    seen -> seen.with(new Thought(keeping.profile(), tuning.name(), advice, warning, feel, measured)));
        });
    }
}
