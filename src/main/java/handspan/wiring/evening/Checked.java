package handspan.wiring.evening;

import handspan.wiring.VenueCheck;

/**
 * What a sound check came to.
 *
 * @param venue verdict and lines
 * @param seconds from the first prompt to the verdict; 0 where nothing had to be held
 */
public record Checked(VenueCheck venue, double seconds) {}
