package handspan.wiring;

import handspan.live.session.Command;
import handspan.live.session.LinkFacts;
import handspan.live.session.Snapshot;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * An instrument wired to its source and targets: live by the clock, or as fast as the machine can with a recording's
 * own times.
 */
public interface Rig extends AutoCloseable {
    /** Gives a command. */
    void submit(Command command);

    /**
     * Follows what happens until the watcher has seen enough or the source is over.
     *
     * @param goesOn shown a snapshot some thirty times a second of the source's time; false ends it
     * @return the last snapshot
     */
    Snapshot follow(Predicate<Snapshot> goesOn);

    /** How all stands now. */
    Snapshot snapshot();

    /** The simulation behind it, where there is one. */
    Optional<Simulation> simulation();

    /** The recording behind it, where there is one that runs by the clock. */
    default Optional<Reel> reel() {
        return Optional.empty();
    }

    /** What a recording's header and contents say against each other, once it has been read; may be empty. */
    String remark();

    /** The link speed that a recording says it was made at; 0 where it does not, and for all else. */
    int recordedBaud();

    /** What is known of the link to a board; {@link LinkFacts#NONE} for recordings and simulations. */
    LinkFacts facts();

    /** Fades, says "silence" to every target, lets go of all. */
    @Override
    void close();
}
