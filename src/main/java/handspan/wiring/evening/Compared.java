package handspan.wiring.evening;

import handspan.profile.RoomComparison;
import java.util.Optional;

/**
 * What differs between two rooms, or two versions of one.
 *
 * @param from the first, in words
 * @param to the second, in words
 * @param comparison from the first to the second
 * @param version the earlier version that is the first; empty where it is another room
 */
public record Compared(String from, String to, RoomComparison comparison, Optional<Integer> version) {}
