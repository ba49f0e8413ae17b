package handspan.room.budget;

/** The chance that a reach misses its cell, for tests of other packages. */
public final class MissedNote {
    private MissedNote() {}

    /** Of a cell that ends so many mm to either side, with a reach that spreads so much. */
    public static double chance01(double nearerMm, double fartherMm, double spreadMm) {
        return NoteChance.of(0, 0, -nearerMm, fartherMm, spreadMm).miss01();
    }
}
