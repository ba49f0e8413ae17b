package handspan.room.calibrate;

import handspan.instrument.sensor.Sensor;
import handspan.number.fit.Robust;
import handspan.number.fit.TheilSen;
import handspan.number.units.Figures;
import handspan.room.Hold;
import java.util.ArrayList;
import java.util.List;

/**
 * Ruler holds that contradict the others: named, not averaged in. Two ways to contradict: a reading turns back, so that
 * one number would mean two distances; or, where the sensor measures a length, it lies far from the line through all.
 */
final class Contradictions {
    /** A hold further from the robust line than this many robust scales is an outlier, and than {@link #LEAST_MM}. */
    private static final double SCALES = 5;

    /** Sensors may bend by 5 mm and a hand may wander by some: less than this contradicts nothing, mm. */
    private static final double LEAST_MM = 15;

    private final List<Hold> holds;
    private final Sensor sensor;

    /**
     * Looks at holds.
     *
     * @param holds each with its ruler distance, rising in it
     */
    Contradictions(List<Hold> holds, Sensor sensor) {
        this.holds = holds;
        this.sensor = sensor;
    }

    /** What contradicts, in words; empty when nothing does. */
    List<String> found() {
        List<String> found = new ArrayList<>(turnedBack());
        if (sensor.isLength() && holds.size() >= 4) {
            found.addAll(offTheLine());
        }
        return found;
    }

    /** Runs one way but for the fewest holds that can be left out. */
    private List<String> turnedBack() {
        int sign = holds.get(holds.size() - 1).physical() >= holds.get(0).physical() ? 1 : -1;
        if (sensor.isLength()) {
            sign = 1;
        }
        boolean[] kept = longestRun(sign);
        int first = firstOf(kept);
        List<String> found = new ArrayList<>();
        int last = lastOf(kept);
        if (holds.size() - 1 - last >= 2) {
            found.add("readings turn back beyond " + mm(holds.get(last)) + " (" + reads(holds.get(last)) + ", then "
                    + reads(holds.get(last + 1)) + "): one reading means two distances there; end the zone at "
                    + mm(holds.get(last)));
        }
        if (first >= 2) {
            found.add("readings turn back nearer than " + mm(holds.get(first)) + " (" + reads(holds.get(first - 1))
                    + ", then "
                    + reads(holds.get(first)) + "): one reading means two distances there; begin the zone at "
                    + mm(holds.get(first)));
        }
        int from = first >= 2 ? first : 0;
        int to = holds.size() - 1 - last >= 2 ? last : holds.size() - 1;
        for (int i = from; i <= to; i++) {
            if (!kept[i]) {
                Hold other = holds.get(i > 0 ? i - 1 : i + 1);
                found.add("the hold at " + mm(holds.get(i)) + " reads " + value(holds.get(i)) + ", the one at "
                        + mm(other) + " reads " + value(other) + ": they run the wrong way; take it again");
            }
        }
        return found;
    }

    /** Marks the longest run of holds that strictly goes one way. */
    private boolean[] longestRun(int sign) {
        int n = holds.size();
        int[] length = new int[n];
        int[] before = new int[n];
        int best = 0;
        for (int i = 0; i < n; i++) {
            length[i] = 1;
            before[i] = -1;
            for (int j = 0; j < i; j++) {
                boolean onward = sign * (holds.get(i).physical() - holds.get(j).physical()) > 0;
                if (onward && length[j] + 1 > length[i]) {
                    length[i] = length[j] + 1;
                    before[i] = j;
                }
            }
            if (length[i] > length[best]) {
                best = i;
            }
        }
        boolean[] kept = new boolean[n];
        for (int i = best; i >= 0; i = before[i]) {
            kept[i] = true;
        }
        return kept;
    }

    private static int firstOf(boolean[] kept) {
        int first = 0;
        while (!kept[first]) {
            first++;
        }
        return first;
    }

    private static int lastOf(boolean[] kept) {
        int last = kept.length - 1;
        while (!kept[last]) {
            last--;
        }
        return last;
    }

    private List<String> offTheLine() {
        double[] x = holds.stream().mapToDouble(hold -> hold.mm().orElseThrow()).toArray();
        double[] y = holds.stream().mapToDouble(Hold::physical).toArray();
        TheilSen line = TheilSen.of(x, y);
        double[] off = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            off[i] = y[i] - line.at(x[i]);
        }
        double scale = Robust.MAD_TO_SD * Robust.medianAbsoluteDeviation(off, Robust.median(off));
        double most = Math.max(SCALES * scale, LEAST_MM);
        List<String> found = new ArrayList<>();
        for (int i = 0; i < x.length; i++) {
            if (Math.abs(off[i]) > most) {
                found.add("the hold at " + mm(holds.get(i)) + " reads " + value(holds.get(i))
                        + ", where the others together say " + Figures.text(line.at(x[i]), 0) + ": take it again");
            }
        }
        return found;
    }

    private String reads(Hold hold) {
        return value(hold) + " at " + mm(hold);
    }

    private String value(Hold hold) {
        return Figures.text(hold.physical(), sensor.isLength() ? 0 : 3);
    }

    private static String mm(Hold hold) {
        return Figures.text(hold.mm().orElseThrow(), 0) + " mm";
    }
}
