package handspan.wiring;

import handspan.instrument.line.LineShape;
import handspan.instrument.survey.ChannelGuess;
import handspan.live.session.ActivityView;
import handspan.live.session.Command;
import handspan.live.session.Snapshot;
import handspan.number.units.Nanos;
import java.util.List;
import java.util.Optional;

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

    /**
     * Listens.
     *
     * @param rig watched from now on
     * @return empty when no line with a number came
     */
    public static Optional<Heard> on(Rig rig) {
        rig.submit(new Command.Watch());
        long startNanos = rig.snapshot().timeNanos();
        Snapshot last = rig.follow(snapshot -> snapshot.readings() < ENOUGH_READINGS
                && Nanos.toSeconds(snapshot.timeNanos() - startNanos) < LONGEST_S);
        return last.activity() instanceof ActivityView.Watching watching
                        && last.shape().isPresent()
                ? Optional.of(new Heard(last.shape().get(), watching.guesses()))
                : Optional.empty();
    }
}
