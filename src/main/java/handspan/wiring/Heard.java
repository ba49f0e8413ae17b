package handspan.wiring;

import handspan.instrument.line.LineShape;
import handspan.instrument.survey.ChannelGuess;
import handspan.live.session.ActivityView;
import handspan.live.session.Command;
import handspan.live.session.Snapshot;
import handspan.number.units.Nanos;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * What a source says of itself when one listens for a moment.
 *
 * @param shape the learned line shape
 * @param guesses what each of its numbers probably is
 */
public record Heard(LineShape shape, List<ChannelGuess> guesses) {
    private static final long ENOUGH_READINGS = 60;

    /** Boards start anew when their port is opened, which takes up to 3 s; learning takes up to 2 s more. */
    private static final double LONGEST_S = 8;

    /** Copies the guesses. */
    public Heard {
        guesses = List.copyOf(guesses);
    }

    /** Listens and tells nobody of what happens meanwhile. */
    public static Optional<Heard> on(Rig rig) {
        return on(rig, snapshot -> {});
    }

    /**
     * Listens.
     *
     * @param rig watched from now on
     * @param watcher shown what happens meanwhile
     * @return empty when no line with a number came
     * @throws IllegalArgumentException with the question, when lines can be read in two ways
     */
    public static Optional<Heard> on(Rig rig, Consumer<Snapshot> watcher) {
        rig.submit(new Command.Watch());
        long startNanos = rig.snapshot().timeNanos();
        Snapshot last = rig.follow(snapshot -> {
            watcher.accept(snapshot);
            return snapshot.readings() < ENOUGH_READINGS
                    && snapshot.question().isEmpty()
                    && Nanos.toSeconds(snapshot.timeNanos() - startNanos) < LONGEST_S;
        });
        if (!last.question().isEmpty()) {
            throw new IllegalArgumentException(last.question());
        }
        return last.activity() instanceof ActivityView.Watching watching
                        && last.shape().isPresent()
                ? Optional.of(new Heard(
                        last.shape()
                                .get()
                                .withNatures(watching.guesses().stream()
                                        .map(ChannelGuess::nature)
                                        .toList()),
                        watching.guesses()))
                : Optional.empty();
    }
}
