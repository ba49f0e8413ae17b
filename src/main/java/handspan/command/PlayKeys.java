package handspan.command;

import handspan.hand.smooth.Quickness;
import handspan.live.session.Command;
import handspan.music.tuning.Tuning;
import handspan.wiring.Rig;
import java.util.List;

/**
 * What the keys do while an instrument plays: mute, go to the next tuning, transpose, trim, smooth more or less, take
 * the light again, quit. A transposition, trim or quickness by key is added to that of the tuning and stays when the
 * tuning changes. Called by the thread that reads the keys and, for {@link #isQuit}, by the one that plays.
 */
final class PlayKeys {
    /** Steps of a trim by key, cents: about the least that is heard (textbooks). */
    private static final double TRIM_CENTS = 5;

    private static final int OCTAVE = 12;

    /** A step by key of how quickly the hand is followed: half as much again or less of wobble and lag. */
    private static final double QUICKNESS_STEP = 0.5;

    private final Talk talk;
    private final Rig rig;
    private final List<Tuning> tunings;
    private int index;
    private Tuning own;
    private int transpose;
    private double trimCents;
    private double quickness;
    private boolean muted;
    private volatile boolean quit;

    /**
     * Keys for a rig that plays.
     *
     * @param tunings of the room
     * @param first the one that plays, possibly snapping otherwise than in the room
     */
    PlayKeys(Talk talk, Rig rig, List<Tuning> tunings, Tuning first, boolean muted) {
        this.talk = talk;
        this.rig = rig;
        this.tunings = tunings;
        this.index = Math.max(0, tunings.stream().map(Tuning::name).toList().indexOf(first.name()));
        this.own = first;
        this.muted = muted;
    }

    void bind(Keys keys) {
        keys.on("", this::mute);
        keys.on("m", this::mute);
        keys.on("t", this::next);
        keys.on("+", () -> shift(1, 0));
        keys.on("-", () -> shift(-1, 0));
        keys.on("++", () -> shift(OCTAVE, 0));
        keys.on("--", () -> shift(-OCTAVE, 0));
        keys.on(">", () -> shift(0, TRIM_CENTS));
        keys.on("<", () -> shift(0, -TRIM_CENTS));
        keys.on("=", this::unshift);
        keys.on("quicker", () -> quicken(QUICKNESS_STEP));
        keys.on("steadier", () -> quicken(-QUICKNESS_STEP));
        keys.on("light", () -> rig.submit(new Command.RetakeLight()));
        keys.on("q", () -> quit = true);
    }

    boolean isQuit() {
        return quit;
    }

    /** A tuning was refused: the one that plays is changed by the next key. */
    synchronized void onRefused(Tuning playing) {
        for (Tuning tuning : tunings) {
            if (tuning.name().equals(playing.name())) {
                own = tuning;
            }
        }
    }

    private synchronized void mute() {
        muted = !muted;
        rig.submit(new Command.Mute(muted));
    }

    private synchronized void next() {
        index = (index + 1) % tunings.size();
        own = tunings.get(index);
        submit(own, transpose, trimCents, quickness);
    }

    private synchronized void shift(int semitones, double cents) {
        submit(own, transpose + semitones, trimCents + cents, quickness);
    }

    private synchronized void unshift() {
        submit(own, 0, 0, 0);
    }

    private synchronized void quicken(double steps) {
        submit(own, transpose, trimCents, quickness + steps);
    }

    private void submit(Tuning tuning, int semitones, double cents, double quicker) {
        try {
            Tuning shifted = tuning.shifted(tuning.transpose() + semitones, tuning.trimCents() + cents)
                    .with(new Quickness(tuning.quickness().steps() + quicker));
            transpose = semitones;
            trimCents = cents;
            quickness = quicker;
            rig.submit(new Command.Tune(shifted));
        } catch (IllegalArgumentException e) {
            talk.warn("no further: " + e.getMessage());
        }
    }
}
