package handspan.live.path;

/**
 * The open light level was to be taken again.
 *
 * @param taken whether it was; for this session only
 * @param beforeRaw the board's number that stood for open before; NaN where there is no light sensor
 * @param afterRaw the one that stands for it now
 * @param words what happened, for people
 */
public record LightTaken(boolean taken, double beforeRaw, double afterRaw, String words) {}
