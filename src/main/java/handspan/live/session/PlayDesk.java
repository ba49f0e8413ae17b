package handspan.live.session;

import handspan.hand.smooth.Quickness;
import handspan.music.tuning.Tuning;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/**
 * What can be set by hand while an instrument plays: whether sound is closed, which of the room's tunings plays, and
 * what is added to it as transposition, trim and quickness, which stays when the tuning changes. Keys, remote control
 * and windows all turn the same knobs here, and what they turn becomes a {@link Command}. May be called by any thread.
 *
 * <p>A setting that no tuning can have is refused at once: the answer is then the reason in words, and nothing changes.
 * A tuning that the room can't play is refused later, by the path, see {@link #onRefused}.
 */
public final class PlayDesk {
    /**
     * How all is set.
     *
     * @param tuning name of the tuning
     * @param number its place in the room, from 1
     * @param transpose semitones added to its own
     * @param trimCents cents added to its own
     * @param quickness steps added to its own
     * @param muted whether sound is closed
     */
    public record Setting(
            String tuning, int number, int transpose, double trimCents, double quickness, boolean muted) {}

    private List<Tuning> tunings;
    private final Consumer<Command> commands;
    private Tuning own;
    private int index;
    private int transpose;
    private double trimCents;
    private double quickness;
    private boolean muted;

    /**
     * A desk for an instrument that plays.
     *
     * @param tunings of the room, at least one
     * @param first the one that plays, possibly snapping otherwise than in the room
     * @param muted whether sound is closed
     * @param commands takes what becomes of each change
     */
    public PlayDesk(List<Tuning> tunings, Tuning first, boolean muted, Consumer<Command> commands) {
        this.tunings = List.copyOf(tunings);
        this.commands = commands;
        this.own = first;
        this.index = Math.max(0, place(first.name()));
        this.muted = muted;
    }

    /** How all is set now. */
    public synchronized Setting setting() {
        return new Setting(own.name(), place(own.name()) + 1, transpose, trimCents, quickness, muted);
    }

    /** Closes or opens the sound. */
    public synchronized void mute(boolean on) {
        if (on != muted) {
            muted = on;
            commands.accept(new Command.Mute(on));
        }
    }

    /** Closes the sound where it is open, else opens it. */
    public synchronized void turnMute() {
        mute(!muted);
    }

    /** Goes to the next tuning of the room, from the last to the first. */
    public synchronized Optional<String> next() {
        index = (index + 1) % tunings.size();
        return set(tunings.get(index), transpose, trimCents, quickness);
    }

    /** Goes to the tuning with a name. */
    public synchronized Optional<String> choose(String name) {
        int place = place(name);
        return place < 0
                ? Optional.of("tuning '" + name + "' is not in this room: it has "
                        + tunings.stream().map(Tuning::name).collect(Collectors.joining(", ")))
                : choose(place + 1);
    }

    /**
     * Goes to a tuning.
     *
     * @param number its place in the room, from 1
     */
    public synchronized Optional<String> choose(int number) {
        if (number < 1 || number > tunings.size()) {
            return Optional.of("tuning " + number + " (1.." + tunings.size() + " in this room)");
        }
        index = number - 1;
        return setIfNew(tunings.get(index), transpose, trimCents);
    }

    /**
     * Sets the transposition.
     *
     * @param semitones added to that of the tuning
     */
    public synchronized Optional<String> transposeTo(int semitones) {
        return setIfNew(own, semitones, trimCents);
    }

    /**
     * Sets the trim.
     *
     * @param cents added to that of the tuning
     */
    public synchronized Optional<String> trimTo(double cents) {
        return setIfNew(own, transpose, cents);
    }

    /** Adds to transposition and trim. */
    public synchronized Optional<String> shift(int semitones, double cents) {
        return set(own, transpose + semitones, trimCents + cents, quickness);
    }

    /** Follows the hand more quickly; below 0, more steadily. */
    public synchronized Optional<String> quicken(double steps) {
        return set(own, transpose, trimCents, quickness + steps);
    }

    /** Back to the tuning as it is kept. */
    public synchronized Optional<String> unshift() {
        return set(own, 0, 0, 0);
    }

    /** Takes the light of the next second without a hand as the open level. */
    public void retakeLight() {
        commands.accept(new Command.RetakeLight());
    }

    /**
     * The path has refused a tuning.
     *
     * @param stays the one that plays on, with all that was added to it
     */
    public synchronized void onRefused(Tuning stays) {
        int place = place(stays.name());
        if (place >= 0) {
            own = tunings.get(place);
            transpose = stays.transpose() - own.transpose();
            trimCents = stays.trimCents() - own.trimCents();
            quickness = stays.quickness().steps() - own.quickness().steps();
        }
    }

    /**
     * The room's tunings were changed. What plays follows where it differs; what was added to it stays, where it can
     * have it.
     *
     * @param others the room's tunings now
     * @param name of the one that goes on; where it is not there any more, the first one plays
     */
    public synchronized void follow(List<Tuning> others, String name) {
        Tuning before = own;
        tunings = List.copyOf(others);
        index = Math.max(0, place(name));
        Tuning next = tunings.get(index);
        if (next.equals(before)) {
            own = next;
        } else if (set(next, transpose, trimCents, quickness).isPresent()) {
            own = next;
            unshift();
        }
    }

    private int place(String name) {
        return tunings.stream().map(Tuning::name).toList().indexOf(name);
    }

    /** What is said twice changes nothing. */
    private Optional<String> setIfNew(Tuning tuning, int semitones, double cents) {
        boolean same =
                tuning.name().equals(own.name()) && semitones == transpose && Double.compare(cents, trimCents) == 0;
        return same ? Optional.empty() : set(tuning, semitones, cents, quickness);
    }

    private Optional<String> set(Tuning tuning, int semitones, double cents, double quicker) {
        try {
            Tuning shifted = tuning.shifted(Math.addExact(tuning.transpose(), semitones), tuning.trimCents() + cents)
                    .with(new Quickness(tuning.quickness().steps() + quicker));
            own = tuning;
            transpose = semitones;
            trimCents = cents;
            quickness = quicker;
            commands.accept(new Command.Tune(shifted));
            return Optional.empty();
        } catch (IllegalArgumentException | ArithmeticException e) {
            return Optional.of(String.valueOf(e.getMessage()));
        }
    }
}
