package handspan.show.scene;

import handspan.music.level.Leaving;
import handspan.music.level.LevelCurve;

/** A volume curve as it becomes when a player says something of it. */
final class LevelSaid {
    private LevelSaid() {}

    /**
     * The curve after it.
     *
     * @throws IllegalArgumentException where it can't be so, in words
     */
    static LevelCurve said(LevelCurve before, Ask what, String value) {
        Leaving leaving = before.leaving();
        return new LevelCurve(
                what == Ask.FLOOR_DB ? Numbers.of(value) : before.floorDb(),
                what == Ask.CEILING_DB ? Numbers.of(value) : before.ceilingDb(),
                what == Ask.KNEE_PERCENT ? Numbers.of(value) / 100 : before.knee01(),
                what == Ask.LOUD_END ? value.equals("far") : before.loudFar(),
                what == Ask.RISE_DB_PER_MS ? Numbers.of(value) : before.riseDbPerMs(),
                new Leaving(
                        what == Ask.LEAVING ? value.equals("hold") : leaving.holds(),
                        what == Ask.FADE_MS ? Numbers.of(value) : leaving.fadeMs()));
    }
}
