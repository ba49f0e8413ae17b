package handspan.outside.simulate;

/**
 * One simulated instrument as help pages show it.
 *
 * @param name what it is asked for by
 * @param instrument invented name of the instrument
 * @param venue invented name of the venue
 * @param description one line
 * @param pitchSpec channel, kind and unit of the pitch number, for example {@code 1:distance:mm}
 * @param levelSpec the same for the level number; empty when there is none
 */
public record CatalogueEntry(
        String name, String instrument, String venue, String description, String pitchSpec, String levelSpec) {}
