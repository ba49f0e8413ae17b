package handspan.command;

import handspan.live.session.PlayDesk;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Which keys do what while an instrument plays; what they do is the desk's. Called by the thread that reads the keys
 * and, for {@link #isQuit}, by the one that plays.
 */
final class PlayKeys {
    /** Steps of a trim by key, cents: about the least that is heard (textbooks). */
    private static final double TRIM_CENTS = 5;

    private static final int OCTAVE = 12;

    /** A step by key of how quickly the hand is followed: half as much again or less of wobble and lag. */
    private static final double QUICKNESS_STEP = 0.5;

    private final Talk talk;
    private final PlayDesk desk;
    private volatile boolean quit;

    /** Keys for a desk. */
    PlayKeys(Talk talk, PlayDesk desk) {
        this.talk = talk;
        this.desk = desk;
    }

    void bind(Keys keys) {
        bind(keys, "");
        keys.on("q", () -> quit = true);
    }

    /**
     * The keys of one of several instruments.
     *
     * @param before comes before each key
     */
    void bind(Keys keys, String before) {
        keys.on(before.strip(), desk::turnMute);
        keys.on(before + "m", desk::turnMute);
        keys.on(before + "t", () -> tell(desk::next));
        keys.on(before + "+", () -> tell(() -> desk.shift(1, 0)));
        keys.on(before + "-", () -> tell(() -> desk.shift(-1, 0)));
        keys.on(before + "++", () -> tell(() -> desk.shift(OCTAVE, 0)));
        keys.on(before + "--", () -> tell(() -> desk.shift(-OCTAVE, 0)));
        keys.on(before + ">", () -> tell(() -> desk.shift(0, TRIM_CENTS)));
        keys.on(before + "<", () -> tell(() -> desk.shift(0, -TRIM_CENTS)));
        keys.on(before + "=", () -> tell(desk::unshift));
        keys.on(before + "quicker", () -> tell(() -> desk.quicken(QUICKNESS_STEP)));
        keys.on(before + "steadier", () -> tell(() -> desk.quicken(-QUICKNESS_STEP)));
        keys.on(before + "light", desk::retakeLight);
    }

    boolean isQuit() {
        return quit;
    }

    private void tell(Supplier<Optional<String>> turned) {
        turned.get().ifPresent(refusal -> talk.warn("no further: " + refusal));
    }
}
