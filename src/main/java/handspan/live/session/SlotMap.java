package handspan.live.session;

import handspan.instrument.line.LineShape;
import handspan.instrument.line.Reading;
import java.util.ArrayList;
import java.util.List;

/**
 * Where the numbers of an earlier line shape stand in a later one, after a board's program has changed: by label and
 * unit; numbers without labels by their place, if the lines have as many as before.
 */
final class SlotMap {
    private final int[] from;
    private final List<String> gone = new ArrayList<>();

    SlotMap(LineShape before, LineShape now) {
        this.from = new int[before.slots().size()];
        for (int i = 0; i < from.length; i++) {
            from[i] = find(before, i, now);
            if (from[i] < 0) {
                gone.add(before.nameOf(i));
            }
        }
    }

    private static int find(LineShape before, int slot, LineShape now) {
        LineShape.Slot wanted = before.slots().get(slot);
        if (wanted.label().isEmpty()) {
            boolean alike = before.slots().size() == now.slots().size()
                    && now.slots().get(slot).label().isEmpty()
                    && sameUnit(wanted, now.slots().get(slot));
            return alike ? slot : -1;
        }
        int found = now.indexOf(wanted.label());
        return found >= 0
                        && !now.slots().get(found).label().isEmpty()
                        && sameUnit(wanted, now.slots().get(found))
                ? found
                : -1;
    }

    private static boolean sameUnit(LineShape.Slot a, LineShape.Slot b) {
        return a.unit().strip().equalsIgnoreCase(b.unit().strip());
    }

    /** Names of the numbers that are not there any more. */
    List<String> gone() {
        return gone;
    }

    /** A reading of the later shape as one of the earlier. */
    Reading back(Reading reading) {
        double[] values = new double[from.length];
        long present = 0;
        long told = 0;
        for (int i = 0; i < from.length; i++) {
            if (from[i] >= 0) {
                values[i] = reading.value(from[i]);
                present |= reading.has(from[i]) ? 1L << i : 0;
                told |= reading.tells(from[i]) ? 1L << i : 0;
            }
        }
        return new Reading(reading.timeNanos(), values, present, told).printedAt(reading.printedNanos());
    }
}
