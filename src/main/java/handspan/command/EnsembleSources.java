package handspan.command;

import handspan.live.session.LinkException;
import handspan.wiring.InstrumentFinder;
import handspan.wiring.Member;
import handspan.wiring.OpenSource;
import handspan.wiring.Roll;
import handspan.wiring.Seat;
import handspan.wiring.Source;
import handspan.wiring.SourceOptions;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Where the readings of several rooms come from: as named, in the order of the rooms, or as the players wave. */
final class EnsembleSources {
    private final PlayVerb verb;
    private final List<Source> named;

    /** A source and how a member opens it. */
    record Spot(Source source, SourceOptions options, Member.Opener opener) {}

    EnsembleSources(PlayVerb verb) throws UsageException {
        this.verb = verb;
        this.named = verb.source.all();
        int rooms = verb.room.rooms.size();
        if (!verb.claim && named.size() != rooms) {
            throw new UsageException(named.size() + " sources for " + rooms
                    + " rooms (as many as rooms, in their order): write it like 'handspan play SOURCE SOURCE --room NAME"
                    + " --room NAME'");
        }
        for (int i = 0; i < named.size(); i++) {
            check(named.get(i), named.subList(0, i));
        }
    }

    private void check(Source source, List<Source> before) throws UsageException {
        if (source.kind() == Source.Kind.PORT && before.contains(source)) {
            throw new UsageException(
                    "port " + source.text() + " for two rooms (a port for each): a board plays one room");
        }
        if (source.kind() == Source.Kind.SIMULATION) {
            UsageException.reading(() -> InstrumentFinder.ofSimulation(source.name()));
        }
        if (verb.claim && source.kind() == Source.Kind.TAKE) {
            throw new UsageException("--claim with " + source.text() + ": nobody waves in a recording");
        }
        if (verb.source.fast && (verb.claim || source.kind() == Source.Kind.PORT)) {
            throw new UsageException("--fast with " + (verb.claim ? "--claim" : source.text())
                    + ": boards and players are never faster than the clock; leave --fast out");
        }
    }

    boolean byTheClock() {
        return !verb.source.fast;
    }

    /** One for each seat, in their order. */
    List<Spot> spots(Talk talk, List<Seat> seats) throws LinkException, IOException {
        return verb.claim ? claimed(talk, seats) : inOrder(talk, seats);
    }

    private List<Spot> inOrder(Talk talk, List<Seat> seats) throws IOException {
        List<Spot> spots = new ArrayList<>();
        for (int i = 0; i < seats.size(); i++) {
            Source source = named.get(i);
            if (source.kind() == Source.Kind.TAKE && !Files.isReadable(Path.of(source.name()))) {
                throw new IOException("recording " + source.name() + " can't be read: name one that is there");
            }
            Seat seat = seats.get(i);
            SourceOptions options = options(seat, source, named.subList(0, i));
            Member.Opener opener = () -> OpenSource.open(
                    source, options, seat.profile().room().instrument().shape(), talk.log());
            spots.add(new Spot(source, options, opener));
        }
        return spots;
    }

    private List<Spot> claimed(Talk talk, List<Seat> seats) throws LinkException, IOException {
        List<Source> candidates = named.isEmpty() ? RollTalk.ports() : named;
        RollTalk words = new RollTalk(talk);
        List<Source> before = new ArrayList<>();
        List<OpenSource> open = words.open(candidates, source -> {
            // whose it is shows later: until then it is opened as the first room's would be
            SourceOptions options = options(seats.get(0), source, before).expecting(null);
            before.add(source);
            return OpenSource.open(source, options, null, talk.log());
        });
        Map<Seat, OpenSource> found;
        try {
            found = Roll.call(seats, open, words);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new LinkException(LinkException.Kind.REFUSED, "the roll was broken off");
        }
        List<Spot> spots = new ArrayList<>();
        for (Seat seat : seats) {
            OpenSource board = found.get(seat);
            spots.add(board == null ? none() : new Spot(board.source(), SourceOptions.USUAL, () -> board));
        }
        if (found.isEmpty()) {
            throw new LinkException(LinkException.Kind.MISSING, "no board was claimed: nothing to play");
        }
        return spots;
    }

    private static Spot none() {
        return new Spot(new Source(Source.Kind.PORT, "no board"), SourceOptions.USUAL, () -> {
            throw new IOException("no board was claimed for it");
        });
    }

    /** One simulated instrument several times over is several players, each with a seed of its own. */
    private SourceOptions options(Seat seat, Source source, List<Source> before) {
        SourceOptions options =
                verb.source.options(source, true, seat.profile().room().instrument());
        return options.seeded(
                options.seed() + before.stream().filter(source::equals).count());
    }
}
