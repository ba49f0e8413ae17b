package handspan.outside.simulate;

import java.util.List;

/** The entries of the catalogue with one fault each. */
final class TroubledInstruments {
    private static final double LUX = 150;
    private static final double RIPPLE_01 = 0.02;

    static final List<Known> ALL = List.of(
            new Known(
                    new CatalogueEntry(
                            "fold",
                            "Cindermoth",
                            "Saltmill Hall",
                            "infrared whose player comes nearer than the fold-over at 60 mm, 40 lines/s",
                            "1:infrared:counts10",
                            "2:photoresistor:counts10"),
                    w -> w.infraredAndLight(Stage.PITCH_IN_THE_FOLD, w.lampLight(LUX, RIPPLE_01))),
            new Known(
                    hall("flicker", "the hall's instrument at 49 lines/s under lamps that flicker by a quarter"),
                    w -> w.hallWith(49, SensorFaults.NONE, w.lampLight(LUX, 0.25))),
            new Known(
                    hall("drift", "the hall's instrument with a ranger and a light that drift over minutes"),
                    w -> w.hallWith(
                            50,
                            SensorFaults.NONE.withCreep(8),
                            w.lampLight(LUX, RIPPLE_01).withDrift01(0.25, w.after(0)))),
            new Known(
                    hall("sleeve", "the hall's instrument under a soft sleeve: 30 % of readings lost, in runs"),
                    w -> w.hallWith(50, SensorFaults.NONE.withLost(0.3, 8), w.lampLight(LUX, RIPPLE_01))),
            new Known(
                    hall("clutter", "the hall's instrument before a stand at 700 mm; somebody walks past at 450 mm"),
                    w -> w.hallWith(
                            50, SensorFaults.NONE.withClutter(700).withPasser(450, 30), w.lampLight(LUX, RIPPLE_01))),
            new Known(
                    hall("blackout", "the hall's instrument; lights fail after 30 s, a spotlight comes after 45 s"),
                    w -> w.hallWith(
                            50,
                            SensorFaults.NONE,
                            w.lampLight(LUX, RIPPLE_01).blackoutAt(w.after(30)).spotlightAt(w.after(45)))),
            new Known(
                    hall("bursts", "the hall's instrument at 100 lines/s behind a latency timer of 16 ms"),
                    w -> w.hallBehindTimer(16, w.lampLight(LUX, RIPPLE_01))),
            new Known(
                    new CatalogueEntry(
                            "crosstalk",
                            "Twinreed",
                            "Saltmill Hall",
                            "two echo sensors that hear each other, 15 lines/s, lines like echo1:1450 echo2:980",
                            "1:echo:us",
                            "2:echo:us"),
                    Workshop::twoEchoes));

    private TroubledInstruments() {}

    private static CatalogueEntry hall(String name, String description) {
        return new CatalogueEntry(
                name, "Willowreach", "Saltmill Hall", description, "1:distance:mm", "2:photoresistor:counts10");
    }
}
