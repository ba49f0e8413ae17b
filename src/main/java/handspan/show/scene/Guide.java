package handspan.show.scene;

import handspan.live.session.PlayDesk;
import handspan.wiring.Source;
import handspan.wiring.SourceOptions;
import handspan.wiring.evening.Evening;
import handspan.wiring.evening.EveningView;
import java.util.Arrays;
import java.util.function.Consumer;

/**
 * Leads through an evening: what is shown at each moment, and what becomes of each wish. Makes a {@link Screen} of an
 * {@link EveningView}, and of a {@link Wish} a call of the {@link Evening}. Owned by the thread that draws.
 */
public final class Guide {
    private final Evening evening;
    private Showing showing;
    private Runnable closing = () -> {};
    private boolean closeOnceSaved;

    /** A guide through an evening, at its first station. */
    public Guide(Evening evening, Showing showing) {
        this.evening = evening;
        this.showing = showing;
    }

    /** What is to be seen now. */
    public Screen screen() {
        EveningView now = evening.view();
        if (closeOnceSaved && !now.keeping().unsaved()) {
            closeOnceSaved = false;
            showing = showing.asking(new Showing.Asked.Nothing());
            closing.run();
        } else if (closeOnceSaved && !now.keeping().trouble().isEmpty()) {
            closeOnceSaved = false;
        }
        showing = RoomWishes.onceSaved(now, evening, showing);
        return Pages.screen(now, showing);
    }

    /** What is to be done when the player wants to close, and nothing is left unsaved against their will. */
    public void closes(Runnable close) {
        closing = close;
    }

    /** Whether something would be lost if the window were closed now. */
    public boolean hasUnsaved() {
        return evening.view().keeping().unsaved();
    }

    /** Does what a player wants. Returns at once. */
    public void fulfil(Wish wish) {
        if (wish instanceof Wish.Plain plain) {
            plain(plain);
        } else if (wish instanceof Wish.Go go) {
            showing = showing.at(go.station());
        } else if (wish instanceof Wish.Say say) {
            said(say.what(), say.value());
        } else if (wish instanceof Wish.Open open) {
            evening.connecting().open(Source.parse(open.source()));
        } else if (wish instanceof Wish.Comma comma) {
            evening.connecting().reopenWith(comma.rule());
        } else if (wish instanceof Wish.Measure measure) {
            showing = RoomWishes.measure(measure.purpose(), evening, showing);
        } else if (wish instanceof Wish.Load load) {
            showing = RoomWishes.load(load.room(), evening, showing);
        } else if (wish instanceof Wish.OfRooms ofRooms) {
            showing = RoomWishes.fulfil(ofRooms, evening, showing);
        } else if (wish instanceof Wish.Heard heard) {
            showing = showing.heard(heard.yes());
        } else if (wish instanceof Wish.Jump jump) {
            evening.takes().jump(jump.seconds());
        } else if (wish instanceof Wish.Skip skip) {
            evening.takes().skip(skip.seconds());
        } else if (wish instanceof Wish.Shift shift) {
            desk(desk -> desk.shift(shift.semitones(), 0).ifPresent(evening.sound()::refuse));
        } else if (wish instanceof Wish.Quicken quicken) {
            NotesScene.quicken(evening, quicken.steps());
        }
    }

    private void desk(Consumer<PlayDesk> turn) {
        evening.sound().desk().ifPresent(turn);
    }

    private void plain(Wish.Plain wish) {
        switch (wish) {
            case LOOK_FOR_PORTS -> {
                evening.connecting().lookForPorts();
                evening.takes().list();
            }
            case LEAVE -> evening.connecting().leave();
            case FIND_HANDS -> evening.connecting().findHands();
            case UNDO -> evening.holds().undo();
            case STOP_HOLDS -> evening.holds().stop();
            case TRY_PATCH -> evening.sound().tryPatch();
            case SILENCE -> evening.sound().silence();
            case PLAY -> evening.sound().play();
            case LET_SOUND -> desk(desk -> desk.mute(false));
            case PRACTISE -> evening.practice().begin();
            case HEAR_NOTE -> evening.practice().hearAgain();
            case STOP_PLAYING -> evening.sound().stopPlaying();
            case NEXT_TUNING -> desk(desk -> desk.next().ifPresent(evening.sound()::refuse));
            case PREVIOUS_TUNING -> desk(this::tuningBefore);
            case AS_KEPT -> desk(desk -> desk.unshift().ifPresent(evening.sound()::refuse));
            case TAKE_LIGHT -> desk(PlayDesk::retakeLight);
            case SAVE -> evening.room().save();
            case LIST_ROOMS -> evening.shelf().list();
            case TURN_STAGE -> showing = showing.stageOnly(!showing.stageOnly());
            case TURN_PITCH_HELP -> showing = showing.pitchHelp(!showing.pitchHelp());
            case CLOSE -> {
                if (hasUnsaved()) {
                    showing = showing.asking(new Showing.Asked.Closing());
                } else {
                    closing.run();
                }
            }
            case SAVE_AND_CLOSE -> {
                closeOnceSaved = true;
                evening.room().save();
            }
            case CLOSE_ANYWAY -> closing.run();
            case STAY -> showing = showing.asking(new Showing.Asked.Nothing());
            case TURN_TAKE -> evening.takes().turn();
            case TURN_RECORDING -> evening.takes().turnRecording();
            case SURVEY -> evening.judging().begin();
            case END_SURVEY -> evening.judging().end();
            case TURN_DARK -> showing = showing.dark(!showing.dark());
        }
    }

    private void tuningBefore(PlayDesk desk) {
        int tunings = evening.view()
                .keeping()
                .profile()
                .map(profile -> profile.tunings().size())
                .orElse(1);
        int number = desk.setting().number();
        desk.choose(number <= 1 ? tunings : number - 1).ifPresent(evening.sound()::refuse);
    }

    private void said(Ask what, String value) {
        switch (what) {
            case SOURCE -> evening.connecting().open(Source.parse(value.strip()));
            case BAUD ->
                evening.connecting().speed(value.equals("auto") ? SourceOptions.AUTO : Integer.parseInt(value));
            case PITCH_HAND -> evening.connecting().say(value, hand(false));
            case LEVEL_HAND -> evening.connecting().say(hand(true), value.equals("none") ? "" : value);
            case TARGETS -> evening.room().sendTo(Arrays.asList(value.split(",", -1)));
            case ROOM_NAME -> evening.room().name(value.strip());
            case RULER_MM -> showing = showing.withRuler(value.strip());
            case COURSE_NOTES, ASKED_BY, WAY_SHOWN, PLAYER ->
                PracticeFields.said(what, value.strip(), evening.practice());
            case CHART -> showing = showing.seeing(value);
            default -> showing = RoomWishes.said(what, value, evening, showing);
        }
    }

    private String hand(boolean pitch) {
        return evening.view()
                .arrival()
                .instrument()
                .map(instrument -> {
                    var level = instrument.level();
                    return pitch ? instrument.pitch().text() : level == null ? "" : level.text();
                })
                .orElse("");
    }

    /** Something went wrong that should not have: said in place, in words, and what plays goes on. */
    public void onMistake(Throwable mistake) {
        evening.onMistake(mistake);
    }

    /** Fades what sounds and lets go of all; then something else is done, by another thread. */
    public void end(Runnable afterwards) {
        evening.end(afterwards);
    }

    /** Begins: looks for ports and rooms. */
    public void begin() {
        evening.connecting().lookForPorts();
        evening.shelf().list();
        evening.takes().list();
    }
}
