package handspan.live.path;

import handspan.instrument.line.Reading;
import handspan.instrument.sensor.Photoresistor;
import handspan.number.units.Figures;
import org.jspecify.annotations.Nullable;

/** The light over the level hand's sensor: guarded, followed and taken again. Owned by the path thread. */
final class LevelLight {
    /** A change of the open level that is worth a word, ln of resistance: a factor of 1.1, some 1.16 in light. */
    private static final double WORTH_LN = Math.log(1.1);

    /** Share of it under which it is not any more. */
    private static final double BACK01 = 0.7;

    private final int slot;
    private final Photoresistor sensor;
    private final OpenLight open;
    private final LightGuard guard;
    private final OpenTaking taking = new OpenTaking();
    private String hint = "";
    private @Nullable LightTaken taken;

    LevelLight(int slot, Photoresistor sensor, double openLn, double coveredLn, boolean loudOpen) {
        this.slot = slot;
        this.sensor = sensor;
        this.open = new OpenLight(openLn, coveredLn);
        this.guard = new LightGuard(Math.abs(openLn - coveredLn), loudOpen);
    }

    void onReading(Reading reading, boolean pitchHand) {
        if (!reading.has(slot) || !sensor.hasReading(reading.value(slot))) {
            return;
        }
        double ln = sensor.physical(reading.value(slot));
        long timeNanos = reading.printedNanos();
        guard.onLight(open.overOpenLn(ln), timeNanos, pitchHand);
        open.onLight(ln, timeNanos, pitchHand);
        if (!pitchHand) {
            hint();
        }
        OpenTaking.Outcome outcome = taking.onLight(ln, timeNanos, pitchHand);
        if (outcome != null) {
            take(outcome);
        }
    }

    private void hint() {
        double movedLn = open.followedLn();
        if (hint.isEmpty() && Math.abs(movedLn) > WORTH_LN) {
            hint = "the open light is " + (movedLn > 0 ? "brighter" : "darker")
                    + " than it was taken to be, by a factor of "
                    + Figures.text(Math.exp(Math.abs(movedLn)), 2)
                    + " in the sensor's resistance, and has been followed: type light to take it again";
        } else if (Math.abs(movedLn) < BACK01 * WORTH_LN) {
            hint = "";
        }
    }

    private void take(OpenTaking.Outcome outcome) {
        double beforeRaw = sensor.raw(open.openLn());
        double afterRaw = outcome == OpenTaking.Outcome.TAKEN ? sensor.raw(taking.takenLn()) : beforeRaw;
        String refusal = outcome == OpenTaking.Outcome.HAND
                ? "a hand played all the time"
                : outcome == OpenTaking.Outcome.UNSTEADY
                        ? "the light did not stand still for 1 s"
                        : sensor.isClipped(afterRaw) ? "the sensor is at an end of its scale" : "";
        if (!refusal.isEmpty()) {
            taken = new LightTaken(
                    false,
                    beforeRaw,
                    beforeRaw,
                    "open light not taken: " + refusal + "; take both hands away and type light again");
            return;
        }
        open.take(taking.takenLn());
        guard.reset();
        hint = "";
        taken = new LightTaken(
                true,
                beforeRaw,
                afterRaw,
                "open light taken for this time: " + Figures.text(beforeRaw, 0) + " before, "
                        + Figures.text(afterRaw, 0) + " now (calibrate --from ROOM --light-only keeps it)");
    }

    void onLost() {
        guard.onLost();
    }

    void retake() {
        taking.ask();
    }

    /** What became of the latest {@link #retake}; told once. */
    @Nullable
    LightTaken takeTaken() {
        LightTaken told = taken;
        taken = null;
        return told;
    }

    LightGuard guard() {
        return guard;
    }

    double shiftLn() {
        return open.shiftLn();
    }

    String hintText() {
        return hint;
    }
}
