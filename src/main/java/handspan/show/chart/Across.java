package handspan.show.chart;

import handspan.number.units.Figures;
import handspan.room.HandSetup;
import handspan.room.Zone;

/** What a chart counts a hand's travel in. */
enum Across {
    /** Millimetres from the sensor. */
    MM(" mm", 1),
    /** Place within the zone, where a sensor without a ruler gives no true mm. */
    PLACE(" of the zone", 3);

    private final String unit;
    private final int decimals;

    Across(String unit, int decimals) {
        this.unit = unit;
        this.decimals = decimals;
    }

    static Across of(HandSetup hand) {
        return hand.scaledTravel() ? PLACE : MM;
    }

    /** A hand's zone counted so. */
    Zone zone(HandSetup hand) {
        Zone zone = hand.zone();
        double length = zone.lengthMm();
        return this == MM ? zone : new Zone(0, 1, zone.nearUncertaintyMm() / length, zone.farUncertaintyMm() / length);
    }

    /** A travel in words, without its unit. */
    String figure(double travel) {
        return Figures.text(travel, decimals);
    }

    /** A travel in words. */
    String words(double travel) {
        return figure(travel) + unit;
    }

    /** Label of an axis. */
    String label(String hand) {
        return this == MM ? "distance of the " + hand + " (mm)" : "place of the " + hand + " (0 = near, 1 = far)";
    }
}
