package handspan.music.tuning;

/**
 * A bend of the pitch map around a place where the hand came to rest: there pitch is exactly a note of the scale.
 *
 * <p>The shift is the same within 60 cents of the place (so that vibrato keeps its width) and runs out to nothing,
 * along half a cosine, two notes of the scale away; further where these are so near that the bent map would not rise:
 * the way is at least twice the shift, which keeps the slope at {@code 1 - pi / 4} or more.
 *
 * @param atKey the place, as the map without bend has it
 * @param shiftKeys from there to the note, at most half the gap to its neighbour
 * @param belowKeys how far below the place the shift runs out
 * @param aboveKeys how far above
 */
record OnsetBend(double atKey, double shiftKeys, double belowKeys, double aboveKeys) {
    /** No bend. */
    static final OnsetBend NONE = new OnsetBend(0, 0, 1, 1);

    /** To either side of the place, key numbers. */
    static final double LEVEL_KEYS = 0.6;

    private static final int NOTES_AWAY = 2;

    /** The bend of a hand at rest. */
    static OnsetBend at(double key, ScaleLadder ladder) {
        int note = ladder.nearest(key);
        double half = Double.POSITIVE_INFINITY;
        if (ladder.size() > 1) {
            int side = key >= ladder.key(note) ? 1 : -1;
            boolean outermost = note + side < 0 || note + side >= ladder.size();
            half = Math.abs(ladder.key(outermost ? note - side : note + side) - ladder.key(note)) / 2;
        }
        double shift = Math.max(-half, Math.min(half, ladder.key(note) - key));
        double least = LEVEL_KEYS + 2 * Math.abs(shift);
        return new OnsetBend(
                key,
                shift,
                Math.max(least, key - beyond(ladder, note, -NOTES_AWAY)),
                Math.max(least, beyond(ladder, note, NOTES_AWAY) - key));
    }

    /** The key so many notes away; where the scale ends, as far on as its outermost gap says. */
    private static double beyond(ScaleLadder ladder, int note, int away) {
        int there = Math.max(0, Math.min(ladder.size() - 1, note + away));
        int missing = note + away - there;
        double gap = ladder.size() < 2
                ? 1
                : away > 0
                        ? ladder.key(ladder.size() - 1) - ladder.key(ladder.size() - 2)
                        : ladder.key(1) - ladder.key(0);
        return ladder.key(there) + missing * gap;
    }

    /** What it adds to a pitch, key numbers. */
    double shift(double key) {
        double away = key - atKey;
        double reach = away < 0 ? belowKeys : aboveKeys;
        double share = (Math.abs(away) - LEVEL_KEYS) / (reach - LEVEL_KEYS);
        if (share >= 1) {
            return 0;
        }
        return shiftKeys * (share <= 0 ? 1 : (1 + Math.cos(Math.PI * share)) / 2);
    }
}
