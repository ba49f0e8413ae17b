package handspan.room.calibrate;

import handspan.number.units.Figures;
import handspan.room.Aim;
import handspan.room.Room;
import java.util.List;
import java.util.Optional;

/**
 * How a calibration ended: with a room, or with a plain "no, because".
 *
 * @param room what was made of the holds; empty when refused
 * @param byEar where the notes were heard; empty when they were not asked for
 * @param reasons why not; empty when there is a room
 */
public record Outcome(Optional<Room> room, Optional<ByEar> byEar, List<String> reasons) {
    /**
     * What notes held by ear make of the zone.
     *
     * @param lowKey lowest note asked for, at its end of the zone
     * @param highKey highest note asked for
     * @param highNear whether the high one is at the near end
     * @param warp of the pitch curve
     * @param residualCents rms of the holds about the curve, over what the fit left free
     * @param uncertaintyCents standard uncertainty of the curve in the middle of the zone
     */
    public record ByEar(
            int lowKey, int highKey, boolean highNear, double warp, double residualCents, double uncertaintyCents) {
        /** How good it is, in words. */
        public String words() {
            return "by ear: residual " + Figures.text(residualCents, 0) + " cents rms, curve good for "
                    + Figures.text(uncertaintyCents, 1) + " cents in the middle (standard uncertainty)";
        }
    }

    /** Copies the reasons. */
    public Outcome {
        reasons = List.copyOf(reasons);
    }

    /** Whether reaches have told the player's aim. */
    public boolean aimMeasured() {
        return room.filter(made -> made.aim().isMeasured()).isPresent();
    }

    /** The same with an aim that was known before, where no reaches have told a newer one. */
    public Outcome knowing(Aim before) {
        return aimMeasured() ? this : new Outcome(room.map(made -> made.with(before)), byEar, reasons);
    }

    static Outcome of(Room room) {
        return new Outcome(Optional.of(room), Optional.empty(), List.of());
    }

    static Outcome of(Room room, ByEar byEar) {
        return new Outcome(Optional.of(room), Optional.of(byEar), List.of());
    }

    static Outcome no(List<String> reasons) {
        return new Outcome(Optional.empty(), Optional.empty(), reasons);
    }
}
