package handspan.outside.simulate;

/**
 * A player at an instrument in a room.
 *
 * @param entry what the catalogue says of it
 * @param seed what it was made from
 * @param player the player, to be given cues
 * @param board the board, to be read
 * @param airCelsius true air temperature of the room, degrees Celsius
 */
public record SimulatedInstrument(
        CatalogueEntry entry, long seed, SimulatedPlayer player, SimulatedBoard board, double airCelsius) {

    /** Name in the catalogue. */
    public String name() {
        return entry.name();
    }
}
