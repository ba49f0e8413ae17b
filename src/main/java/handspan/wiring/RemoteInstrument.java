package handspan.wiring;

import handspan.live.session.PlayDesk;
import handspan.live.session.Snapshot;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * An instrument that obeys orders from outside.
 *
 * @param name part of its addresses
 * @param room that it is played in, for answers
 * @param desk whose knobs are turned
 * @param state what it is doing, in a word
 */
public record RemoteInstrument(String name, String room, PlayDesk desk, Supplier<String> state) {
    /** One that says of itself what its session says. */
    public static RemoteInstrument of(String name, String room, PlayDesk desk, Supplier<Optional<Snapshot>> snapshot) {
        return new RemoteInstrument(name, room, desk, () -> word(snapshot.get()));
    }

    private static String word(Optional<Snapshot> snapshot) {
        return snapshot.flatMap(now -> now.activity().played())
                .map(playing -> playing.state().word())
                .orElse("waiting");
    }
}
