package handspan.music.passage;

/**
 * A vibrato that was found in a note.
 *
 * @param rateHz turns a second
 * @param widthCents half of peak to peak
 * @param chance01 that noise alone would show it
 */
public record Vibrato(double rateHz, double widthCents, double chance01) {}
