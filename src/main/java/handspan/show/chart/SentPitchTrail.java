package handspan.show.chart;

import handspan.live.path.HandsNow;
import handspan.live.session.ActivityView;
import handspan.live.session.Recent;
import handspan.live.session.Snapshot;
import handspan.music.send.PlayState;
import handspan.music.send.SoundFrame;
import handspan.music.tuning.Tuning;
import handspan.number.units.Figures;

/**
 * The pitch that was sent in the last ten seconds, gathered from snapshots: every frame, not only that of each look.
 * While the sound is closed by the player, what the hand would play goes on. Owned by one thread.
 */
final class SentPitchTrail {
    /** A frame that sounded. */
    static final int SOUNDS = 0;

    /** What a hand would play if the sound were open. */
    static final int WAITS = 1;

    /** Neither. */
    static final int SILENT = 2;

    private final TimeRing ring = new TimeRing(LastSeconds.SPAN_NANOS, LastSeconds.MOST);
    private Tuning tuning;
    private String words = "not playing";
    private long next;
    private long nowNanos;
    private long version;
    private boolean empty = true;

    SentPitchTrail(Tuning tuning) {
        this.tuning = tuning;
    }

    /** Takes notes of another tuning until one plays. */
    void use(Tuning other) {
        version += other.equals(tuning) ? 0 : 1;
        tuning = other;
    }

    void onSnapshot(Snapshot snapshot) {
        String before = words;
        boolean moved = snapshot.timeNanos() != nowNanos;
        nowNanos = snapshot.timeNanos();
        ActivityView.Playing playing = snapshot.activity().played().orElse(null);
        if (playing != null) {
            version += playing.tuning().equals(tuning) ? 0 : 1;
            tuning = playing.tuning();
            take(playing);
            words = words(playing);
        } else {
            words = "not playing";
        }
        TimeRun run = run();
        boolean nothing = run.count(SILENT) == run.size();
        version += (moved && !(nothing && empty)) || !words.equals(before) ? 1 : 0;
        empty = nothing;
    }

    private void take(ActivityView.Playing playing) {
        Recent<SoundFrame> sent = playing.sent();
        if (sent.next() < next) {
            // another evening, or the same one played anew
            ring.clear();
            next = 0;
        }
        for (next = Math.max(next, sent.first()); next < sent.next(); next++) {
            SoundFrame frame = sent.at(next);
            ring.add(frame.timeNanos(), frame.pitchHz(), frame.gain01() > 0 ? SOUNDS : SILENT);
        }
        HandsNow hands = playing.hands();
        boolean sounds = playing.frame().map(frame -> frame.gain01() > 0).orElse(false);
        if (playing.state() == PlayState.MUTED && hands.pitch() && !sounds) {
            double key = SoundWords.keyAt(tuning, hands.pitchPlace01());
            ring.add(nowNanos, tuning.reference().hz(key), WAITS);
        }
    }

    private String words(ActivityView.Playing playing) {
        SoundFrame frame = playing.frame().orElse(null);
        if (frame != null && frame.gain01() > 0) {
            return playing.state().word() + ": "
                    + SoundWords.note(tuning, tuning.reference().key(frame.pitchHz())) + ", "
                    + Figures.text(frame.pitchHz(), 1) + " Hz, " + SoundWords.level(frame.gain01());
        }
        return switch (playing.state()) {
            case PLAYING -> "playing: silent";
            case AWAY -> "away: no hand";
            case LOST -> "lost: the board does not send";
            case MUTED ->
                playing.hands().pitch()
                        ? "muted: would play "
                                + SoundWords.note(
                                        tuning,
                                        SoundWords.keyAt(tuning, playing.hands().pitchPlace01()))
                        : "muted: no hand";
        };
    }

    /** What was sent, in Hz. */
    TimeRun run() {
        return ring.run(nowNanos);
    }

    Tuning tuning() {
        return tuning;
    }

    String words() {
        return words;
    }

    long version() {
        return version;
    }
}
