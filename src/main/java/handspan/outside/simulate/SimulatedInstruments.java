package handspan.outside.simulate;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The simulated instruments that can be asked for by name. Instruments and venues are invented. */
public final class SimulatedInstruments {
    private static final List<Known> USUAL = List.of(
            new Known(
                    new CatalogueEntry(
                            "hall",
                            "Willowreach",
                            "Saltmill Hall",
                            "laser ranger and light cell in a lit hall, 50 lines/s, lines like 234,567",
                            "1:distance:mm",
                            "2:photoresistor:counts10"),
                    w -> w.flightAndLight(
                            TimeOfFlightSettings.likeTheMeasuredHour(w.pitchErrors()), w.lampLight(150, 0.02))),
            new Known(
                    new CatalogueEntry(
                            "attic",
                            "Willowreach",
                            "Fennel Attic",
                            "the same instrument in a dim room whose light drifts, 50 lines/s",
                            "1:distance:mm",
                            "2:photoresistor:counts10"),
                    w -> w.flightAndLight(
                            TimeOfFlightSettings.likeTheMeasuredHour(w.pitchErrors()),
                            w.lampLight(15, 0.03).withDrift01(0.1))),
            new Known(
                    new CatalogueEntry(
                            "echo",
                            "Quillbank",
                            "Saltmill Hall",
                            "echo times and light cell, 18 lines/s, lines like us:1450 light:567",
                            "1:echo:us",
                            "2:photoresistor:counts10"),
                    w -> w.echoAndLight(w.lampLight(150, 0.02))),
            new Known(
                    new CatalogueEntry(
                            "echo-cm",
                            "Bramblepost",
                            "Fennel Attic",
                            "echo sensor in whole centimetres, no level, 16 lines/s, lines like Distance: 23 cm",
                            "1:echo:cm",
                            ""),
                    Workshop::echoInCentimetres),
            new Known(
                    new CatalogueEntry(
                            "two-flight",
                            "Larkspan",
                            "Saltmill Hall",
                            "a laser ranger for each hand, 30 lines/s, lines like D:234 L:180",
                            "1:distance:mm",
                            "2:distance:mm"),
                    Workshop::twoFlights),
            new Known(
                    new CatalogueEntry(
                            "noisy",
                            "Thistlerow",
                            "Fennel Attic",
                            "a poor laser ranger (6 mm of noise, 10 % dropouts) and light cell, 50 lines/s",
                            "1:distance:mm",
                            "2:photoresistor:counts10"),
                    w -> w.flightAndLight(
                            TimeOfFlightSettings.usual(w.pitchErrors())
                                    .withNoise(6, 0, 0)
                                    .withDropouts01(0.1),
                            w.lampLight(60, 0.03))),
            new Known(
                    new CatalogueEntry(
                            "still",
                            "Plumbline",
                            "Saltmill Hall",
                            "no error of any kind, two distances in tenths of a millimetre, 50 lines/s",
                            "1:distance:mm",
                            "2:distance:mm"),
                    Workshop::ideal),
            new Known(
                    new CatalogueEntry(
                            "infrared",
                            "Cindermoth",
                            "Saltmill Hall",
                            "infrared part of 10-80 cm and light cell, 40 lines/s, lines like 312,567",
                            "1:infrared:counts10",
                            "2:photoresistor:counts10"),
                    w -> w.infraredAndLight(Stage.PITCH_BY_INFRARED, w.lampLight(150, 0.02))),
            new Known(
                    new CatalogueEntry(
                            "light-only",
                            "Duskpetal",
                            "Saltmill Hall",
                            "pitch by a light cell, no level, 50 lines/s, lines like ldr: 345",
                            "1:photoresistor:counts10",
                            ""),
                    w -> w.lightAlone(w.lampLight(150, 0.02))));

    private static final List<Known> KNOWN =
            Stream.concat(USUAL.stream(), TroubledInstruments.ALL.stream()).toList();

    private SimulatedInstruments() {}

    /** All entries, in the order to show them. */
    public static List<CatalogueEntry> catalogue() {
        return KNOWN.stream().map(Known::entry).toList();
    }

    /** As {@link #create(String, long, long)}, powered up at time 0. */
    public static SimulatedInstrument create(String name, long seed) {
        return create(name, seed, 0);
    }

    /**
     * Makes an instrument with its player.
     *
     * @param name a name of the catalogue
     * @param seed specimens, noise and player follow from it
     * @param startNanos when its board is powered up
     * @throws IllegalArgumentException when the name is unknown; the message lists the known ones
     */
    public static SimulatedInstrument create(String name, long seed, long startNanos) {
        return KNOWN.stream()
                .filter(known -> known.entry().name().equals(name))
                .findFirst()
                .map(known -> known.build().apply(new Workshop(known.entry(), seed, startNanos)))
                .orElseThrow(() -> new IllegalArgumentException("No simulated instrument has this name: " + name
                        + " (known: " + names() + "); choose one of them."));
    }

    private static String names() {
        return catalogue().stream().map(CatalogueEntry::name).collect(Collectors.joining(", "));
    }
}
