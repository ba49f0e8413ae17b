package handspan.music.passage;

import handspan.music.level.LevelCurve;
import java.util.Arrays;
import java.util.List;

/**
 * What of the level was used while it sounded above the floor. The ends leave out a twentieth of the time each, so that
 * neither a fade nor a slip of the hand sets them.
 *
 * @param lowDb nine tenths of the time lay above this, less a twentieth
 * @param highDb and below this
 * @param atCeilingShare01 share of the time within 0.1 dB of the ceiling
 */
public record LevelUse(double lowDb, double highDb, double atCeilingShare01) {
    private static final double LEFT_OUT = 0.05;
    private static final double AT_CEILING_DB = 0.1;

    /** From the one to the other. */
    public double rangeDb() {
        return highDb - lowDb;
    }

    static LevelUse of(List<Sounding> soundings, LevelCurve curve) {
        int count = soundings.stream().mapToInt(Sounding::size).sum();
        double[] levels = new double[count];
        int at = 0;
        int atCeiling = 0;
        for (Sounding sounding : soundings) {
            for (int i = 0; i < sounding.size(); i++) {
                double levelDb = sounding.levelDb(i);
                if (levelDb >= curve.floorDb()) {
                    levels[at++] = levelDb;
                    atCeiling += levelDb >= curve.ceilingDb() - AT_CEILING_DB ? 1 : 0;
                }
            }
        }
        if (at == 0) {
            return new LevelUse(Double.NaN, Double.NaN, Double.NaN);
        }
        Arrays.sort(levels, 0, at);
        return new LevelUse(
                levels[(int) Math.round(LEFT_OUT * (at - 1))],
                levels[(int) Math.round((1 - LEFT_OUT) * (at - 1))],
                (double) atCeiling / at);
    }
}
