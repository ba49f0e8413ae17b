package handspan.bench;

import handspan.hand.smooth.HandSmoother;
import handspan.hand.smooth.OneEuro;
import handspan.hand.smooth.OnePole;
import handspan.hand.smooth.SensorNoise;
import handspan.hand.smooth.SmoothSettings;
import handspan.hand.smooth.SpikeGate;
import handspan.hand.trial.Follower;
import handspan.hand.trial.Trace;
import handspan.number.units.Nanos;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/** The families of filters, each of which can be made for a wanted steadiness. */
final class FeelFilters {
    /** A filter with its settings. */
    interface Setting {
        /** A fresh one for a specimen. */
        Follower fresh(SensorNoise noise, double ratePerS);

        /** Its figures, in words. */
        String words();
    }

    /** A family: one number makes it steadier (small) or quicker (large); others are tried from a grid. */
    interface Family {
        String name();

        /** Number of other settings that are tried. */
        int choices();

        /** The setting of a choice at a steadiness, 0..1. */
        Setting at(int choice, double quick01, double noiseMm);
    }

    private FeelFilters() {}

    static List<Family> baselines() {
        return List.of(new MovingAverages(), new OnePoles(), new OneEuros());
    }

    static Family ours() {
        return new Ours();
    }

    /** A mean of the last readings; a part of a reading counts as a part. */
    private static final class MovingAverages implements Family {
        @Override
        public String name() {
            return "moving average";
        }

        @Override
        public int choices() {
            return 1;
        }

        @Override
        public Setting at(int choice, double quick01, double noiseMm) {
            double length = Math.pow(60, 1 - quick01);
            return setting("of " + BenchTable.figure(length, 1) + " readings", (noise, rate) -> {
                Deque<Double> last = new ArrayDeque<>();
                return (mm, intervalS) -> {
                    last.addFirst(mm);
                    double sum = 0;
                    double weights = 0;
                    for (double value : last) {
                        double weight = Math.max(0, Math.min(1, length - weights));
                        sum += weight * value;
                        weights += weight;
                    }
                    while (last.size() > length + 1) {
                        last.removeLast();
                    }
                    return sum / weights;
                };
            });
        }
    }

    private static final class OnePoles implements Family {
        @Override
        public String name() {
            return "one-pole";
        }

        @Override
        public int choices() {
            return 1;
        }

        @Override
        public Setting at(int choice, double quick01, double noiseMm) {
            double hz = 0.05 * Math.pow(2000, quick01);
            return setting("of " + BenchTable.figure(hz, 2) + " Hz", (noise, rate) -> {
                OnePole pole = new OnePole();
                return (mm, intervalS) -> pole.next(mm, hz, intervalS);
            });
        }
    }

    /** Rise with speed and cut-off of the speed from a grid, the least cut-off from the steadiness. */
    private static final class OneEuros implements Family {
        private static final double[] RISES = {0.0005, 0.001, 0.002, 0.004, 0.008, 0.015, 0.03, 0.06, 0.12, 0.25};
        private static final double[] SPEED_HZ = {0.5, 1, 2, 4, 8};

        @Override
        public String name() {
            return "One Euro";
        }

        @Override
        public int choices() {
            return RISES.length * SPEED_HZ.length;
        }

        @Override
        public Setting at(int choice, double quick01, double noiseMm) {
            double hz = 0.001 * Math.pow(80_000, quick01);
            // noise looks like speed: the grid goes with it, so that each sensor has its whole grid
            double rise = 2.15 / noiseMm * RISES[choice % RISES.length];
            double speedHz = SPEED_HZ[choice / RISES.length];
            return setting(
                    BenchTable.figure(hz, 2) + " Hz + " + BenchTable.figure(rise, 4) + " a mm/s, speed "
                            + BenchTable.figure(speedHz, 1) + " Hz",
                    (noise, rate) -> new OneEuro(hz, rise, speedHz)::next);
        }
    }

    /** This project's own: the wanted wobble is its only setting, noise is what was learned of the specimen. */
    private static final class Ours implements Family {
        private static final double NO_LIMIT_MS = 5000;

        @Override
        public String name() {
            return "still or moving";
        }

        @Override
        public int choices() {
            return 1;
        }

        @Override
        public Setting at(int choice, double quick01, double noiseMm) {
            double target01 = 0.05 * Math.pow(20, quick01);
            return setting(BenchTable.figure(100 * target01, 0) + " % of the noise", (noise, rate) -> {
                SmoothSettings settings = new SmoothSettings(noise, rate, target01 * noise.worstMm(), NO_LIMIT_MS);
                return new HandSmoother(settings)::next;
            });
        }
    }

    private interface Maker {
        Follower make(SensorNoise noise, double ratePerS);
    }

    private static Setting setting(String words, Maker maker) {
        return new Setting() {
            @Override
            public Follower fresh(SensorNoise noise, double ratePerS) {
                return maker.make(noise, ratePerS);
            }

            @Override
            public String words() {
                return words;
            }
        };
    }

    /** What comes out of a filter behind the spike gate, held between readings. */
    static Trace run(Setting setting, FeelKind kind, FeelKind.Seen seen) {
        Follower follower = setting.fresh(kind.noise(), kind.ratePerS());
        SpikeGate gate = new SpikeGate();
        List<Double> times = new ArrayList<>();
        List<Double> said = new ArrayList<>();
        double lastS = Double.NaN;
        for (FeelKind.Reading reading : seen.readings()) {
            boolean good = !Double.isNaN(reading.mm())
                    && gate.passes(
                            reading.mm(),
                            Nanos.ofSeconds(reading.timeS() + 1),
                            Double.NaN,
                            kind.noise().at(reading.mm()));
            if (good) {
                double intervalS = Double.isNaN(lastS) ? 1 / kind.ratePerS() : reading.timeS() - lastS;
                lastS = reading.timeS();
                times.add(reading.timeS());
                said.add(follower.next(reading.mm(), intervalS));
            }
        }
        int[] at = {0};
        return Trace.of(seen.hand().seconds(), time -> {
            while (at[0] + 1 < times.size() && times.get(at[0] + 1) <= time + 1e-9) {
                at[0]++;
            }
            return said.get(at[0]);
        });
    }
}
