package handspan.instrument.survey;

import handspan.instrument.line.Reading;
import handspan.number.units.Nanos;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/**
 * A player was called and waves over the own instrument: which of several boards saw it. A board counts that left its
 * own rest to and fro, and that did so alone; the more a number scatters at rest, the farther it has to go. Pure; owned
 * by one thread.
 */
public final class WaveCall {
    /** What can be said so far. */
    public sealed interface Verdict {
        /** Nobody has waved yet. */
        record Nobody() implements Verdict {}

        /** One has, and no other: its number from 0. */
        record One(int board) implements Verdict {}

        /** Several have moved at once: nobody can tell who was meant. */
        record Several(List<Integer> boards) implements Verdict {
            /** Copies the numbers. */
            public Several {
                boards = List.copyOf(boards);
            }
        }
    }

    /** Lines from which a rest is known; before, nothing is judged (this project's own choice). */
    public static final int FEWEST_AT_REST = 20;

    /** Only what was seen lately counts, so that it does not matter how long a player took to begin. */
    private static final long WINDOW_NANOS = 4 * Nanos.PER_SECOND;

    /** A hand that does not wave but passes by: others are not alone with it. */
    private static final double PASSING01 = 0.05;

    /** So long others have to stay away after the first is sure: who begins a little later was not alone. */
    private static final long ALONE_NANOS = Nanos.PER_SECOND;

    private final List<Watched> boards = new ArrayList<>();
    private long latestNanos = Long.MIN_VALUE;
    private long sureNanos = Long.MAX_VALUE;

    /** One board's number for the pitch hand. */
    private static final class Watched {
        private final int slot;
        private final AtRest rest;
        private final Deque<Reading> latest = new ArrayDeque<>();

        Watched(int slot, AtRest rest) {
            this.slot = slot;
            this.rest = rest;
        }

        FollowedHand followed() {
            SlotInPart part = new SlotInPart();
            latest.forEach(reading -> part.add(reading, slot));
            return FollowedHand.of(part, rest);
        }
    }

    /**
     * A call.
     *
     * @param rests what each board said while all hands were away
     * @param slots where in its lines the called room's pitch hand would be; -1 for boards that don't fit the room or
     *     are taken
     */
    public WaveCall(List<List<Reading>> rests, List<Integer> slots) {
        for (int i = 0; i < rests.size(); i++) {
            int slot = rests.get(i).size() < FEWEST_AT_REST ? -1 : slots.get(i);
            SlotInPart rest = new SlotInPart();
            rests.get(i).forEach(reading -> rest.add(reading, slot));
            boards.add(new Watched(rest.lines() < FEWEST_AT_REST ? -1 : slot, AtRest.of(rest)));
        }
    }

    /** Whether any board could be the one. */
    public boolean isPossible() {
        return boards.stream().anyMatch(board -> board.slot >= 0);
    }

    /** Takes a reading that a board made since the call. */
    public void onReading(int board, Reading reading) {
        Watched watched = boards.get(board);
        if (watched.slot < 0) {
            return;
        }
        latestNanos = Math.max(latestNanos, reading.timeNanos());
        Deque<Reading> latest = watched.latest;
        latest.addLast(reading);
        while (latest.getFirst().timeNanos() < reading.timeNanos() - WINDOW_NANOS) {
            latest.removeFirst();
        }
    }

    /** What can be said so far. */
    public Verdict verdict() {
        List<Integer> moved = new ArrayList<>();
        boolean waved = false;
        for (int i = 0; i < boards.size(); i++) {
            if (boards.get(i).slot < 0) {
                continue;
            }
            FollowedHand hand = boards.get(i).followed();
            waved |= hand.isSure();
            if (hand.isSure() || hand.moved01() >= PASSING01) {
                moved.add(i);
            }
        }
        sureNanos = waved ? Math.min(sureNanos, latestNanos) : Long.MAX_VALUE;
        return !waved || latestNanos - sureNanos < ALONE_NANOS
                ? new Verdict.Nobody()
                : moved.size() == 1 ? new Verdict.One(moved.get(0)) : new Verdict.Several(moved);
    }
}
