package handspan.wiring.evening;

import handspan.instrument.sensor.Instrument;
import handspan.number.units.Nanos;
import handspan.wiring.Recording;
import handspan.wiring.RecordingSocket;
import handspan.wiring.Reel;
import handspan.wiring.Rigs;
import handspan.wiring.SourceOptions;
import handspan.wiring.TakeFacts;
import handspan.wiring.evening.Taking.Kept;
import handspan.wiring.evening.Taking.Made;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The recordings of an evening: the one that runs in place of a board, the one that is made, those that are kept. */
public final class TakeKeeping {
    private static final int MOST_LISTED = 100;

    private final EveningState state;
    private final Turns turns;
    private final Path folder;
    private final RecordingSocket socket = new RecordingSocket();
    private volatile @Nullable Recording recording;
    private volatile long begunNanos;

    TakeKeeping(EveningState state, Turns turns, Path folder) {
        this.state = state;
        this.turns = turns;
        this.folder = folder;
    }

    /** Where a recording is plugged into whatever instrument is opened. */
    RecordingSocket socket() {
        return socket;
    }

    /** A view that also tells where recordings stand. */
    EveningView standing(EveningView seen) {
        Taking taking = seen.taking().at(reel().map(Reel::place));
        Recording now = recording;
        if (now != null) {
            boolean stopped = !now.trouble().isEmpty();
            taking = taking.making(Optional.of(made(now, !stopped)), now.trouble());
        }
        return seen.with(taking);
    }

    private Made made(Recording now, boolean running) {
        return new Made(now.file(), Nanos.toSeconds(Rigs.CLOCK.getAsLong() - begunNanos), now.lines(), running);
    }

    // ---- the one that runs ----

    private Optional<Reel> reel() {
        return state.instrument().flatMap(instrument -> instrument.rig().reel());
    }

    private void drive(Consumer<Reel> wanted) {
        reel().ifPresent(wanted);
    }

    /** Lets the recording that runs stand where it is, or go on. */
    public void turn() {
        drive(Reel::turn);
    }

    /** Takes it to a place, seconds from its start. */
    public void jump(double seconds) {
        drive(reel -> reel.jump(seconds));
    }

    /** Takes it on by so many seconds; below 0, back. */
    public void skip(double seconds) {
        drive(reel -> reel.jump(Math.max(0, reel.place().placeS() + seconds)));
    }

    // ---- the one that is made ----

    /** Begins a recording of what the open instrument sends, in a file of its own; ends it where one is made. */
    public void turnRecording() {
        turns.add("recording", this::trouble, () -> {
            if (recording != null) {
                end();
            } else {
                begin();
            }
        });
    }

    private void begin() throws IOException {
        EveningView seen = state.view();
        OpenInstrument instrument = state.needInstrument();
        int chosen = seen.arrival().options().baud();
        int found = instrument.rig().facts().baud();
        Recording begun = Recording.fresh(
                folder,
                Rigs.dateAndTime(),
                seen.arrival().instrument().map(Instrument::name).orElse(Instrument.USUAL_NAME),
                seen.arrival().source().orElseThrow(() -> new IllegalArgumentException("nothing is open to record")),
                found > 0 ? found : chosen == SourceOptions.AUTO ? Instrument.USUAL_BAUD : chosen);
        begunNanos = Rigs.CLOCK.getAsLong();
        recording = begun;
        socket.plug(begun);
    }

    /** Ends the one that is made; returns when its file is closed. */
    void end() {
        Recording ended = recording;
        if (ended == null) {
            return;
        }
        socket.unplug();
        Made last = made(ended, false);
        ended.close();
        Made closed = new Made(last.file(), last.seconds(), ended.lines(), false);
        state.change(seen -> seen.with(seen.taking().making(Optional.of(closed), ended.trouble())));
        recording = null;
        list();
    }

    private void trouble(String words) {
        state.change(seen -> seen.with(seen.taking().making(seen.taking().made(), "no recording was begun: " + words)));
    }

    // ---- those that are kept ----

    /** Lists the recordings that are kept beside the rooms. */
    public void list() {
        turns.add("looking for recordings", words -> {}, () -> {
            List<Kept> kept = kept();
            state.change(seen -> seen.with(seen.taking().listing(kept)));
        });
    }

    private List<Kept> kept() throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        List<Path> files;
        try (Stream<Path> all = Files.list(folder)) {
            files = all.filter(file -> file.toString().endsWith(Recording.SUFFIX))
                    .sorted(Comparator.comparing(Path::toString).reversed())
                    .limit(MOST_LISTED)
                    .toList();
        }
        List<Kept> kept = new ArrayList<>();
        for (Path file : files) {
            kept.add(new Kept(file, TakeFacts.words(file)));
        }
        return kept;
    }
}
