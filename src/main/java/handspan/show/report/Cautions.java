package handspan.show.report;

import java.util.List;

/**
 * What a report says so that nobody comes to harm. Figures: NIOSH publication 98-126 (1998), Criteria for a Recommended
 * Standard: Occupational Noise Exposure, sections 1.1 and 1.2 (85 dBA over 8 hours, 3 dB for half the time; sections
 * from memory), and Recommendation ITU-T H.870 (2018), the WHO-ITU standard for safe listening devices (80 dBA over 40
 * hours a week, 75 dBA for children; as M. Kawamori, L. Best, M. Laureyns sum it up in Hearing Review, September 2020,
 * and not read in the standard itself).
 */
final class Cautions {
    private Cautions() {}

    /** A section of its own. */
    static List<ReportPart> parts() {
        return List.of(
                new ReportPart.Heading("Cautions"),
                new ReportPart.Points(List.of(
                        "Hearing: begin with the monitors low. The level ceiling is there to stay; it bounds what is sent, not"
                                + " how loud a loudspeaker makes it. NIOSH 98-126 recommends at most 85 dBA over 8 hours a day"
                                + " and half the time for each 3 dB more: 88 dBA 4 hours, 94 dBA 1 hour, 100 dBA 15 minutes."
                                + " For headphones WHO-ITU H.870 goes by 80 dBA over 40 hours a week, 75 dBA for children."
                                + " The venue's and local rules come first.",
                        "Eyes: follow the laser or infrared class that the maker states for the sensor. No lenses into the"
                                + " emitter, no covers or filters off.",
                        "Electricity: USB or an isolated low-voltage supply. Nothing here is rated for mains.",
                        "Handspan is no safety device: nothing in it may be what keeps a person from harm.")));
    }
}
