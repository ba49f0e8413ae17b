package handspan.wiring;

import handspan.instrument.line.LineShape;
import handspan.instrument.line.Reading;
import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.Instrument;
import handspan.instrument.sensor.PortIdentity;
import handspan.instrument.survey.WaveCall;
import handspan.live.session.LineSeen;
import handspan.live.session.LinkState;
import handspan.live.session.Recent;
import handspan.live.session.Snapshot;
import handspan.number.units.Nanos;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The rooms are called one after another, and the board whose player then waves is that room's. Boards that are known
 * by their USB identity need not. By the clock; boards stay open, so that none has to start anew. Used by one thread.
 */
public final class Roll {
    /** Told what happens. */
    public interface Caller {
        /** All hands shall be away. */
        void away();

        /** A player shall wave. */
        void calls(Seat seat);

        /** It was not clear; the player is called again. */
        void again(Seat seat, String why);

        /** A room has its board. */
        void has(Seat seat, Source source, boolean byWave);

        /** A room has none. */
        void hasNone(Seat seat, String why);
    }

    private static final long LOOK_MS = 30;
    private static final long REST_NANOS = 3 * Nanos.PER_SECOND;

    /** Boards start anew when they are opened, which takes 3 s at most (common practice), and then are learned. */
    private static final long LONGEST_REST_NANOS = 9 * Nanos.PER_SECOND;

    /** Hands that moved at once come to rest meanwhile. */
    private static final long SETTLE_NANOS = 3 * Nanos.PER_SECOND / 2;

    private static final long PATIENCE_NANOS = 20 * Nanos.PER_SECOND;
    private static final int MOST_CALLS = 3;

    private final List<OpenSource> boards;
    private final Caller caller;
    private final List<List<Reading>> rests = new ArrayList<>();
    private final long[] seen;
    private final boolean[] taken;
    private final Map<Seat, OpenSource> found = new LinkedHashMap<>();

    private Roll(List<OpenSource> boards, Caller caller) {
        this.boards = List.copyOf(boards);
        this.caller = caller;
        this.seen = new long[boards.size()];
        this.taken = new boolean[boards.size()];
        boards.forEach(board -> rests.add(new ArrayList<>()));
    }

    /**
     * Calls all.
     *
     * @param seats rooms without a board
     * @param boards that are open; those that no room has got are closed
     * @return the boards of those who have one
     */
    public static Map<Seat, OpenSource> call(List<Seat> seats, List<OpenSource> boards, Caller caller)
            throws InterruptedException {
        Roll roll = new Roll(boards, caller);
        try {
            roll.takeKnown(seats);
            if (roll.found.size() < seats.size() && !boards.isEmpty()) {
                roll.awaitRest();
            }
            for (Seat seat : seats) {
                if (!roll.found.containsKey(seat)) {
                    roll.call(seat);
                }
            }
            return new LinkedHashMap<>(roll.found);
        } finally {
            for (int i = 0; i < boards.size(); i++) {
                if (!roll.taken[i]) {
                    boards.get(i).rig().close();
                }
            }
        }
    }

    private void takeKnown(List<Seat> seats) {
        List<Optional<PortIdentity>> rooms = seats.stream()
                .map(seat -> Optional.ofNullable(instrument(seat).port()))
                .toList();
        List<Optional<PortIdentity>> there = boards.stream()
                .map(board -> Optional.ofNullable(board.rig().facts().identity()))
                .toList();
        List<Integer> known = KnownBoards.of(rooms, there);
        for (int i = 0; i < seats.size(); i++) {
            if (known.get(i) >= 0) {
                take(seats.get(i), known.get(i), false);
            }
        }
    }

    private static Instrument instrument(Seat seat) {
        return seat.profile().room().instrument();
    }

    private void take(Seat seat, int board, boolean byWave) {
        taken[board] = true;
        found.put(seat, boards.get(board));
        caller.has(seat, boards.get(board).source(), byWave);
    }

    private void awaitRest() throws InterruptedException {
        caller.away();
        long startNanos = Rigs.CLOCK.getAsLong();
        long restNanos = 0;
        while (restNanos < LONGEST_REST_NANOS && !(restNanos >= REST_NANOS && isRestKnown())) {
            look((board, reading) -> keep(rests.get(board), reading));
            restNanos = Rigs.CLOCK.getAsLong() - startNanos;
        }
    }

    /** Of a rest the latest counts: when a board starts, it prints what is none. */
    private static void keep(List<Reading> rest, Reading reading) {
        rest.add(reading);
        while (rest.get(0).timeNanos() < reading.timeNanos() - REST_NANOS) {
            rest.remove(0);
        }
    }

    private boolean isRestKnown() {
        return rests.stream().allMatch(rest -> rest.size() >= WaveCall.FEWEST_AT_REST);
    }

    private void call(Seat seat) throws InterruptedException {
        List<Integer> slots = new ArrayList<>();
        for (int i = 0; i < boards.size(); i++) {
            slots.add(taken[i] ? -1 : slot(seat, boards.get(i).rig().snapshot()));
        }
        if (!new WaveCall(rests, slots).isPossible()) {
            caller.hasNone(seat, "no board is left whose lines fit room '" + seat.room() + "'");
            return;
        }
        String why = "";
        for (int calls = 0; calls < MOST_CALLS; calls++) {
            if (calls > 0) {
                caller.again(seat, why);
                settle();
            }
            caller.calls(seat);
            WaveCall.Verdict verdict = wave(seat, slots);
            if (verdict instanceof WaveCall.Verdict.One one) {
                take(seat, one.board(), true);
                return;
            }
            why = verdict instanceof WaveCall.Verdict.Several several
                    ? "several moved at once (" + names(several.boards()) + "): only one may wave"
                    : "nobody waved within " + PATIENCE_NANOS / Nanos.PER_SECOND + " s";
        }
        caller.hasNone(seat, why);
    }

    private WaveCall.Verdict wave(Seat seat, List<Integer> slots) throws InterruptedException {
        WaveCall call = new WaveCall(rests, slots);
        simulatedPlayerWaves(seat);
        long startNanos = Rigs.CLOCK.getAsLong();
        WaveCall.Verdict verdict = call.verdict();
        while (verdict instanceof WaveCall.Verdict.Nobody && Rigs.CLOCK.getAsLong() - startNanos < PATIENCE_NANOS) {
            look(call::onReading);
            verdict = call.verdict();
        }
        return verdict;
    }

    private String names(List<Integer> numbers) {
        return numbers.stream()
                .map(number -> boards.get(number).source().text())
                .collect(Collectors.joining(", "));
    }

    private void settle() throws InterruptedException {
        long startNanos = Rigs.CLOCK.getAsLong();
        while (Rigs.CLOCK.getAsLong() - startNanos < SETTLE_NANOS) {
            look((board, reading) -> {});
        }
    }

    /** Where in a board's lines a room's pitch hand would be; -1 where they are not that room's lines. */
    private static int slot(Seat seat, Snapshot board) {
        LineShape known = instrument(seat).shape();
        if (board.shape().isEmpty() || board.link() == LinkState.LOST) {
            return -1;
        }
        LineShape shape = board.shape().get();
        boolean fits = (known == null || known.slots().size() == shape.slots().size())
                && instrument(seat).channels().stream()
                        .map(ChannelSpec::channel)
                        .allMatch(channel -> shape.indexOf(channel) >= 0);
        return fits ? shape.indexOf(instrument(seat).pitch().channel()) : -1;
    }

    /** Takes a reading of a board. */
    private interface Taker {
        void take(int board, Reading reading);
    }

    private void look(Taker taker) throws InterruptedException {
        Thread.sleep(LOOK_MS);
        for (int i = 0; i < boards.size(); i++) {
            Recent<LineSeen> lines = boards.get(i).rig().snapshot().seen();
            for (long line = Math.max(seen[i], lines.first()); line < lines.next(); line++) {
                Reading reading = lines.at(line).reading();
                if (reading != null) {
                    taker.take(i, reading);
                }
            }
            seen[i] = lines.next();
        }
    }

    /** The player of a simulation waves when called; of several with one instrument the first who has no room yet. */
    private void simulatedPlayerWaves(Seat seat) {
        for (int i = 0; i < boards.size(); i++) {
            OpenSource board = boards.get(i);
            Optional<Simulation> simulation = board.rig().simulation();
            boolean own = simulation.isPresent()
                    && InstrumentFinder.ofSimulation(board.source().name())
                            .name()
                            .equals(instrument(seat).name());
            if (own && !taken[i]) {
                simulation.get().wave(Rigs.CLOCK.getAsLong());
                return;
            }
        }
    }
}
