package handspan.instrument.survey;

import handspan.number.units.Figures;
import handspan.number.units.Nanos;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/**
 * Whether echo instruments that play side by side hear each other's pings: then single readings, or runs of two, lie
 * far off those before and after them, in several instruments at once. A sensor that does so by itself, alone, gets no
 * word here; nor does one whose readings were astray as often while no other was on. Pure: time comes with the
 * readings. Owned by one thread.
 */
public final class EchoNeighbours {
    private static final long WINDOW_NANOS = 10 * Nanos.PER_SECOND;

    /** Both at their limit by chance, in one look of many, is not enough: they have to stay there. */
    private static final long LASTING_NANOS = 5 * Nanos.PER_SECOND;

    /** As for readings that go to and fro between two levels, see {@link Beating}. */
    private static final double LEAST_SHARE01 = 0.12;

    private static final int LEAST_ASTRAY = 8;

    /** A window that says anything: some four seconds of the slowest board. */
    private static final int FEWEST = 60;

    /** Off by as much as no hand goes there and back within three lines (this project's own choice). */
    private static final double ASTRAY_MM = 40;

    /** Those before and after agree this far, hand's own way included. */
    private static final double AGREE_MM = 30;

    private static final int RUN = 2;

    private final List<Ear> ears;

    /** One instrument. */
    private static final class Ear {
        private final String name;
        private final Deque<double[]> latest = new ArrayDeque<>();
        private long latestNanos = Long.MIN_VALUE;
        private long sinceNanos = Long.MAX_VALUE;
        private double alone01 = Double.NaN;

        Ear(String name) {
            this.name = name;
        }

        boolean isOn(long nowNanos) {
            return latestNanos != Long.MIN_VALUE && nowNanos - latestNanos < Nanos.PER_SECOND;
        }

        void drop(long nowNanos) {
            while (!latest.isEmpty() && latest.getFirst()[0] < nowNanos - WINDOW_NANOS) {
                latest.removeFirst();
            }
        }

        double[] values() {
            return latest.stream().mapToDouble(each -> each[1]).toArray();
        }
    }

    /** Echo instruments of an ensemble, by their names. */
    public EchoNeighbours(List<String> names) {
        this.ears = names.stream().map(Ear::new).toList();
    }

    /**
     * Takes a reading of an instrument.
     *
     * @param instrument its number in the list, from 0
     * @param mm the distance that it says; NaN where it has none
     */
    public void onReading(int instrument, double mm, long timeNanos) {
        Ear ear = ears.get(instrument);
        ear.latestNanos = timeNanos;
        if (!Double.isNaN(mm)) {
            ear.latest.addLast(new double[] {timeNanos, mm});
        }
        ear.drop(timeNanos);
    }

    /** Who hears whom, and what to do; empty where nobody does. To be asked about once a second. */
    public Optional<String> hint(long nowNanos) {
        long on = ears.stream().filter(ear -> ear.isOn(nowNanos)).count();
        List<String> hearing = new ArrayList<>();
        for (Ear ear : ears) {
            ear.drop(nowNanos);
            double share01 = astray01(ear.values());
            if (on == 1 && ear.isOn(nowNanos) && ear.latest.size() >= FEWEST) {
                ear.alone01 = share01;
            }
            boolean risen = Double.isNaN(ear.alone01) || share01 > 2 * ear.alone01;
            boolean hears = on > 1 && ear.isOn(nowNanos) && share01 >= LEAST_SHARE01 && risen;
            ear.sinceNanos = hears ? Math.min(ear.sinceNanos, nowNanos) : Long.MAX_VALUE;
            if (hears && nowNanos - ear.sinceNanos >= LASTING_NANOS) {
                hearing.add(ear.name + " " + Figures.text(100 * share01, 0) + " %");
            }
        }
        return hearing.size() < 2 ? Optional.empty() : Optional.of(words(hearing));
    }

    /** Ping in turn, 30 to 50 ms apart: common practice with such sensors. */
    private static String words(List<String> hearing) {
        return "these echo sensors hear each other (readings astray in 10 s: " + String.join(", ", hearing)
                + "): turn them away from each other, move them farther apart, or let the boards ping in turn, 30 to"
                + " 50 ms apart";
    }

    /** Share of readings that lie far off those before and after them, which agree; 0 where there are too few. */
    static double astray01(double[] mm) {
        int astray = 0;
        for (int i = 1; i < mm.length - 1; ) {
            int run = run(mm, i);
            astray += run;
            i += Math.max(1, run);
        }
        return mm.length < FEWEST || astray < LEAST_ASTRAY ? 0 : astray / (double) mm.length;
    }

    private static int run(double[] mm, int from) {
        for (int length = 1; length <= RUN && from + length < mm.length; length++) {
            double before = mm[from - 1];
            double after = mm[from + length];
            if (Math.abs(after - before) <= AGREE_MM && isOff(mm, from, length, (before + after) / 2)) {
                return length;
            }
        }
        return 0;
    }

    private static boolean isOff(double[] mm, int from, int length, double middle) {
        for (int i = from; i < from + length; i++) {
            if (Math.abs(mm[i] - middle) < ASTRAY_MM) {
                return false;
            }
        }
        return true;
    }
}
