package handspan.show.scene;

import handspan.live.session.PlayDesk;
import handspan.music.tuning.NoteName;
import handspan.music.tuning.Tuning;
import handspan.wiring.evening.Evening;
import handspan.wiring.evening.EveningView;
import handspan.wiring.evening.HoldPurpose;
import handspan.wiring.evening.HoldTaking;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What becomes of wishes that have to do with rooms: those that are kept, the one in hand, its holds and its tunings.
 * Each answers what is to be seen then. What would lose something unsaved is asked about first.
 */
final class RoomWishes {
    private RoomWishes() {}

    static Showing fulfil(Wish.OfRooms wish, Evening evening, Showing showing) {
        if (wish instanceof Wish.Look look) {
            evening.shelf().look(look.room());
        } else if (wish instanceof Wish.CompareWith with) {
            evening.shelf().compareWith(with.room());
        } else if (wish instanceof Wish.CompareVersion version) {
            evening.shelf().compareVersion(version.number());
        } else if (wish instanceof Wish.Restore restore) {
            boolean loses = evening.view().keeping().unsaved()
                    && evening.view().keeping().held().equals(restore.room());
            Showing.Asked asked = new Showing.Asked.Restoring(restore.room(), restore.number());
            return loses ? showing.asking(asked) : done(asked, evening, showing);
        } else if (wish instanceof Wish.DoAnyway) {
            return done(showing.asked(), evening, showing);
        } else if (wish instanceof Wish.PlayTuning tuning) {
            Optional<PlayDesk> desk = evening.sound().desk();
            desk.flatMap(turned -> turned.choose(tuning.name())).ifPresent(evening.sound()::refuse);
        } else if (wish instanceof Wish.RoomAct act) {
            return act(act, evening, showing);
        }
        return showing;
    }

    private static Showing act(Wish.RoomAct act, Evening evening, Showing showing) {
        Optional<String> refusal = Optional.empty();
        switch (act) {
            case STEP_BACK -> evening.shelf().stepBack();
            case TURN_FURTHER -> {
                return showing.with(
                        showing.drafts().showingFurther(!showing.drafts().further()));
            }
            case COMPARE_WITH_HAND -> evening.shelf().compareWithHand();
            case ADD_TUNING -> refusal = evening.room().addTuning();
            case REMOVE_TUNING -> refusal = evening.room().removeTuning();
            case FIRST_TUNING -> refusal = evening.room().startWithTuning();
        }
        return showing.with(showing.drafts()
                .refusing(
                        Ask.TUNING,
                        evening.view().keeping().edited().map(Tuning::name).orElse(""),
                        refusal));
    }

    /** To load a room; asks first where something is unsaved. */
    static Showing load(String room, Evening evening, Showing showing) {
        Showing.Asked asked = new Showing.Asked.Loading(room);
        return evening.view().keeping().unsaved() ? showing.asking(asked) : done(asked, evening, showing);
    }

    /** To have holds taken; a fresh room in the place of one that is unsaved is asked about first. */
    static Showing measure(HoldPurpose purpose, Evening evening, Showing showing) {
        Showing.Asked asked = new Showing.Asked.Measuring(purpose);
        boolean loses = purpose == HoldPurpose.FRESH && evening.view().keeping().unsaved();
        return loses ? showing.asking(asked) : done(asked, evening, showing);
    }

    /** Once nothing is unsaved any more, what was asked about is done. */
    static Showing onceSaved(EveningView now, Evening evening, Showing showing) {
        boolean waits = !(showing.asked() instanceof Showing.Asked.Nothing)
                && !(showing.asked() instanceof Showing.Asked.Closing);
        return waits && !now.keeping().unsaved() ? done(showing.asked(), evening, showing) : showing;
    }

    private static Showing done(Showing.Asked asked, Evening evening, Showing showing) {
        Showing free = showing.asking(new Showing.Asked.Nothing());
        if (asked instanceof Showing.Asked.Loading loading) {
            evening.shelf().load(loading.room());
        } else if (asked instanceof Showing.Asked.Restoring restoring) {
            evening.shelf().restore(restoring.room(), restoring.version());
        } else if (asked instanceof Showing.Asked.Measuring measuring) {
            begin(measuring.purpose(), evening, showing);
            return free.at(Station.ROOM);
        }
        return free;
    }

    private static void begin(HoldPurpose purpose, Evening evening, Showing showing) {
        try {
            evening.holds().begin(purpose, purpose == HoldPurpose.FRESH ? way(showing) : HoldTaking.Way.ENDS);
        } catch (IllegalArgumentException e) {
            evening.holds().refuse(String.valueOf(e.getMessage()));
        }
    }

    private static HoldTaking.Way way(Showing showing) {
        List<Double> ruler;
        try {
            ruler = Numbers.several(showing.ruler());
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(
                    "ruler '" + showing.ruler() + "': numbers of mm parted by commas, or nothing", e);
        }
        return new HoldTaking.Way(
                ruler, keys(showing.drafts().notes()), showing.drafts().reaches());
    }

    private static List<Integer> keys(String notes) {
        return notes.isBlank()
                ? List.of()
                : Arrays.stream(notes.split(",", -1))
                        .map(String::strip)
                        .map(NoteName::parse)
                        .toList();
    }

    /** What a player says of the room in hand or of the next one; where it can't be so, it stays in its field. */
    static Showing said(Ask what, String value, Evening evening, Showing showing) {
        Drafts drafts = showing.drafts();
        Optional<String> refusal;
        switch (what) {
            case NOTES_BY_EAR -> {
                return showing.with(drafts.withNotes(value.strip()));
            }
            case REACHES -> {
                return showing.with(drafts.reaching(value.equals(RoomFields.WITH_REACHES)));
            }
            case TUNING -> refusal = evening.room().edit(value);
            case TUNING_NAME -> refusal = evening.room().renameTuning(value.strip());
            case FLOOR_DB, CEILING_DB, KNEE_PERCENT, RISE_DB_PER_MS, LOUD_END, LEAVING, FADE_MS ->
                refusal = evening.room()
                        .change(
                                "the level curve has changed",
                                profile -> profile.with(LevelSaid.said(profile.level(), what, value)));
            default -> refusal = evening.room().changeTuning(tuning -> TuningSaid.said(tuning, what, value.strip()));
        }
        return showing.with(drafts.refusing(what, value, refusal));
    }
}
