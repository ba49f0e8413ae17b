package handspan.outside.simulate;

import handspan.number.units.Nanos;

/**
 * Any sensor with faults around it: readings lost in runs, things in the beam, a creeping error, values that are slow
 * to change or frozen. A lost reading is what the sensor prints when it sees nothing; of hand and things the nearest is
 * seen. Times count from power-up.
 */
public final class FaultySensor implements SensorModel {
    /** How long somebody who walks past is in the beam, seconds (assumed). */
    public static final double PASS_SECONDS = 1.2;

    /** Time constant of the creep, seconds (assumed: a small board warms up within minutes). */
    public static final double CREEP_SECONDS = 240;

    private final SensorModel sensor;
    private final SensorFaults faults;
    private final long startNanos;
    private final Dropouts lost;
    private final SimulatedHand nothing = new SimulatedHand(HandSettings.STILL, 1);
    private final SimulatedHand clutter;
    private final SimulatedHand passer;
    private boolean started;
    private long lastUpdate;
    private double printed;

    /**
     * A sensor with faults.
     *
     * @param sensor the sensor itself
     * @param startNanos when its board is powered up
     */
    public FaultySensor(SensorModel sensor, SensorFaults faults, long seed, long startNanos) {
        this.sensor = sensor;
        this.faults = faults;
        this.startNanos = startNanos;
        lost = new Dropouts(faults.lost01(), faults.longestRun(), Seeds.random(seed, "lost readings"));
        clutter = thingAt(faults.clutterMm(), startNanos);
        passer = thingAt(faults.passerMm(), startNanos);
    }

    @Override
    public double read(SimulatedHand hand, long timeNanos, double settlingErrorMm) {
        double seconds = Nanos.toSeconds(timeNanos - startNanos);
        if (started && seconds >= faults.frozenAfterSeconds()) {
            return printed;
        }
        long momentNanos = timeNanos;
        if (faults.updateMs() > 0) {
            long periodNanos = Nanos.ofMs(faults.updateMs());
            long update = Math.floorDiv(timeNanos - startNanos, periodNanos);
            if (started && update == lastUpdate) {
                return printed;
            }
            lastUpdate = update;
            momentNanos = startNanos + update * periodNanos;
        }
        started = true;
        printed = sensor.read(seen(hand, momentNanos), momentNanos, settlingErrorMm + creepMm(momentNanos));
        return printed;
    }

    @Override
    public int decimals() {
        return sensor.decimals();
    }

    @Override
    public double measuringMs() {
        return sensor.measuringMs();
    }

    private SimulatedHand seen(SimulatedHand hand, long timeNanos) {
        SimulatedHand nearest = nearer(hand, clutter, timeNanos);
        double turn = Nanos.toSeconds(timeNanos - startNanos) % faults.passEverySeconds();
        if (turn >= faults.passEverySeconds() - PASS_SECONDS) {
            nearest = nearer(nearest, passer, timeNanos);
        }
        boolean handSeen = nearest.equals(hand) && hand.presentAt(timeNanos);
        return handSeen && lost.next() ? nothing : nearest;
    }

    private static SimulatedHand nearer(SimulatedHand a, SimulatedHand b, long timeNanos) {
        return b.trueMm(timeNanos) < a.trueMm(timeNanos) ? b : a;
    }

    private double creepMm(long timeNanos) {
        double seconds = Math.max(0, Nanos.toSeconds(timeNanos - startNanos));
        return faults.creepMm() * -Math.expm1(-seconds / CREEP_SECONDS);
    }

    /** Something that stands still from before power-up on; nothing where its distance is 0. */
    private static SimulatedHand thingAt(double mm, long startNanos) {
        SimulatedHand thing = new SimulatedHand(HandSettings.STILL, 1);
        if (mm > 0) {
            thing.goTo(mm, startNanos - Nanos.PER_SECOND, 0.1);
        }
        return thing;
    }
}
