package handspan.command;

import handspan.live.session.ActivityView;
import handspan.live.session.Command;
import handspan.live.session.Event;
import handspan.live.session.Snapshot;
import handspan.music.practice.Attempt;
import handspan.wiring.EventReader;
import handspan.wiring.Rig;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;

/** Leads a player through a course of notes, until it is over or a key ends it. */
final class PracticeSession {
    private final Rig rig;
    private final PracticeTalk words;
    private final PlayTalk playTalk;
    private final AtomicBoolean quit = new AtomicBoolean();
    private final AtomicInteger exit = new AtomicInteger(Exit.DONE);

    /**
     * A session.
     *
     * @param words of the course
     * @param playTalk words of the instrument that plays all the while
     */
    PracticeSession(Rig rig, PracticeTalk words, PlayTalk playTalk) {
        this.rig = rig;
        this.words = words;
        this.playTalk = playTalk;
    }

    /**
     * Says what happens at keys.
     *
     * @param startsMuted how the instrument begins
     */
    void bind(Keys keys, boolean startsMuted) {
        AtomicBoolean muted = new AtomicBoolean(startsMuted);
        Runnable turnMute = () -> {
            muted.set(!muted.get());
            rig.submit(new Command.Mute(muted.get()));
        };
        keys.on("", turnMute);
        keys.on("m", turnMute);
        keys.on("r", words::sound);
        keys.on("q", () -> quit.set(true));
    }

    /**
     * Follows a course to its end, or to that which a key makes.
     *
     * @return the exit code
     */
    int lead(Command.Practise practise, Keys keys) {
        EventReader events = new EventReader();
        rig.submit(practise);
        keys.listen();
        rig.follow(snapshot -> {
            events.fresh(snapshot).forEach(this::tell);
            playTalk.show(snapshot);
            words.help(snapshot);
            return !isOver(snapshot) && !quit.get() && exit.get() == Exit.DONE;
        });
        return exit.get();
    }

    private void tell(Event event) {
        playTalk.tell(event);
        words.tell(event);
        if (event.what() instanceof Event.Refused || event.what() instanceof Event.Ambiguous) {
            exit.set(Exit.USAGE);
        } else if (event.what() instanceof Event.Failed) {
            exit.set(Exit.INTERNAL);
        }
    }

    private static boolean isOver(Snapshot snapshot) {
        return snapshot.activity() instanceof ActivityView.Practising practising && practising.over();
    }

    /** What has become of the notes so far. */
    List<Attempt> attempts() {
        return rig.snapshot().activity() instanceof ActivityView.Practising practising
                ? practising.attempts()
                : List.of();
    }
}
