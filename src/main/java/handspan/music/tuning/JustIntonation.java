package handspan.music.tuning;

import java.util.List;

/**
 * Twelve notes in whole-number ratios of 2, 3 and 5 to the tonic.
 *
 * <p>Sources: the intervals stand in the tables of A. J. Ellis's appendix to H. Helmholtz, On the Sensations of Tone,
 * 2nd English edition, 1885; that these twelve are put together is common practice (of the two usual minor sevenths the
 * wider, 9/5, a fifth above the minor third).
 */
public record JustIntonation() implements Temperament {
    static final String WORD = "just";

    private static final List<Ratio> RATIOS = List.of(
            new Ratio(1, 1),
            new Ratio(16, 15),
            new Ratio(9, 8),
            new Ratio(6, 5),
            new Ratio(5, 4),
            new Ratio(4, 3),
            new Ratio(45, 32),
            new Ratio(3, 2),
            new Ratio(8, 5),
            new Ratio(5, 3),
            new Ratio(9, 5),
            new Ratio(15, 8));

    @Override
    public String word() {
        return WORD;
    }

    @Override
    public double cents(int semitones) {
        return RATIOS.get(semitones).cents();
    }

    @Override
    public List<Double> allCents() {
        return RATIOS.stream().map(Ratio::cents).toList();
    }
}
