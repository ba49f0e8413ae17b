package handspan.show.report;

import handspan.music.level.LevelCurve;
import handspan.number.units.Figures;
import handspan.room.Zone;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Where in a zone the levels lie: floor, ceiling, each full 6 dB between them, and silence.
 *
 * @param curve from place to level
 * @param zone of the level hand
 */
record LevelMarks(LevelCurve curve, Zone zone) {
    /** From mark to mark: half the amplitude, nearly. */
    private static final int STEP_DB = 6;

    /** The marks in the order of their distance. */
    List<NoteStrip.Mark> marks() {
        List<NoteStrip.Mark> marks = new ArrayList<>();
        marks.add(new NoteStrip.Mark(mm(curve.floorDb()), db(curve.floorDb()) + " dB", true));
        marks.add(new NoteStrip.Mark(mm(curve.ceilingDb()), db(curve.ceilingDb()) + " dB", true));
        if (curve.knee01() > 0) {
            marks.add(new NoteStrip.Mark(zone.mm(curve.loudFar() ? 0 : 1), "silent", true));
        }
        int first = (int) Math.floor(curve.floorDb() / STEP_DB) * STEP_DB + STEP_DB;
        for (int levelDb = first; levelDb < curve.ceilingDb(); levelDb += STEP_DB) {
            marks.add(new NoteStrip.Mark(mm(levelDb), db(levelDb), false));
        }
        marks.sort(Comparator.comparingDouble(NoteStrip.Mark::mm));
        return marks;
    }

    /** Distance of a level from floor to ceiling: the inverse of {@link LevelCurve#gain01} above the knee. */
    private double mm(double levelDb) {
        double up = curve.knee01()
                + (1 - curve.knee01()) * (levelDb - curve.floorDb()) / (curve.ceilingDb() - curve.floorDb());
        return zone.mm(curve.loudFar() ? up : 1 - up);
    }

    String words() {
        double stepMm = Math.abs(mm(curve.ceilingDb()) - mm(curve.ceilingDb() - STEP_DB));
        String below = curve.knee01() > 0
                ? "below the knee at " + db(curve.floorDb()) + " dB it falls to silence within "
                        + Figures.text(curve.knee01() * zone.lengthMm(), 1) + " mm"
                : "silent at the quiet end";
        return "Level in dB below full, " + STEP_DB + " dB every " + Figures.text(stepMm, 1) + " mm, never above "
                + db(curve.ceilingDb()) + " dB; " + below + ".";
    }

    private static String db(double levelDb) {
        return Figures.text(levelDb, levelDb == Math.rint(levelDb) ? 0 : 1);
    }
}
