package handspan.music.passage;

/**
 * One note of a passage, all its visits together.
 *
 * @param note of the tuning's ladder
 * @param name as it sounds
 * @param hz where it is
 * @param visits how often it was played
 * @param seconds for how long in all
 * @param sound how far what sounded lay off it
 * @param hand how far the hand alone would have
 * @param wobble of its still parts
 */
public record PlayedNote(
        int note, String name, double hz, int visits, double seconds, CentsOff sound, CentsOff hand, Wobble wobble) {}
