package handspan.room.budget;

import handspan.instrument.sensor.InfraredLaw;
import handspan.room.Response;
import handspan.room.Zone;

/**
 * How much the unknown shape of an infrared sensor's curve matters between two ends that are known: places move when
 * {@code a} of its law is another than the data sheet's, and when the law is not quite the sensor's curve.
 */
final class InfraredShape {
    private InfraredShape() {}

    /** Standard uncertainty of a place, mm. */
    static double uncertaintyMm(Response.Triangulation law, Zone zone, double place01) {
        double mm = zone.mm(place01);
        double spreadVolts = PitchBudget.INFRARED_A_VOLTS / Math.sqrt(3);
        double up = movedMm(law, zone, mm, spreadVolts);
        double down = movedMm(law, zone, mm, -spreadVolts);
        double fromA = (Math.abs(up) + Math.abs(down)) / 2;
        double fromLaw = PitchBudget.INFRARED_LAW_VOLTS * mmPerVolt(law, mm) * Math.sqrt(4 * place01 * (1 - place01));
        return Math.hypot(fromA, fromLaw);
    }

    /** By how much a place moves when a changes and the ends stay. */
    private static double movedMm(Response.Triangulation law, Zone zone, double mm, double changeVolts) {
        double near = law.physical(zone.nearMm());
        double far = law.physical(zone.farMm());
        double a = Math.min(law.aVolts() + changeVolts, far - 0.01);
        InfraredLaw other = InfraredLaw.throughEnds(a, near, zone.nearMm(), far, zone.farMm());
        return other.mm(law.physical(mm)) - mm;
    }

    private static double mmPerVolt(Response.Triangulation law, double mm) {
        return Math.pow(mm + law.kMm(), 2) / law.bVoltMm();
    }
}
