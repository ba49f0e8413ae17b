package handspan.room.budget;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.hand.smooth.SmoothSettings;
import handspan.music.tuning.Direction;
import handspan.music.tuning.PitchCurve;
import handspan.music.tuning.PitchRange;
import handspan.music.tuning.ScaleLadder;
import handspan.music.tuning.Scales;
import handspan.music.tuning.Tuning;
import handspan.room.Aim;
import handspan.room.HandSetup;
import handspan.room.Room;
import handspan.room.Zone;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NoteChanceTest {
    /** Zone of 400 mm for two octaves. */
    private static final double CENTS_PER_MM = 6;

    private static final double RELATIVE = 1e-8;

    /** The published column has 7 decimals. */
    private static final double PUBLISHED = 1e-7;

    private static final double TINY_MM = 1e-9;

    /**
     * Closed form, recomputed with long numbers: a pitch with normal error leaves the +-50 cent cell of its semitone
     * with {@code Q((50 - bias) / sd) + Q((50 + bias) / sd)}.
     */
    @ParameterizedTest
    @CsvSource({
        "5, 1.523970605e-23",
        "10, 5.733031438e-07",
        "15, 0.0008581206664",
        "20, 0.01241933065",
        "25, 0.0455002639"
    })
    void aSemitoneIsMissedAsOftenAsTheNormalDistributionSays(double spreadCents, double miss01) {
        Aim aim = new Aim(spreadCents / CENTS_PER_MM, 10);
        List<NoteChance> chances = NoteChance.of(AdviceRooms.exact(), Tuning.usual(), aim);
        assertEquals(25, chances.size());
        assertEquals(miss01, chances.get(12).miss01(), RELATIVE * miss01);
        // the outermost notes go on beyond the zone: half of it
        assertEquals(miss01 / 2, chances.get(0).miss01(), RELATIVE * miss01);
        assertEquals(miss01 / 2, chances.get(24).miss01(), RELATIVE * miss01);
        assertEquals(Double.NEGATIVE_INFINITY, chances.get(0).nearMm());
        assertEquals(Double.POSITIVE_INFINITY, chances.get(24).farMm());
    }

    /** The same closed form with a bias of 10 cents: the cell is lopsided about where the hand aims. */
    @ParameterizedTest
    @CsvSource({
        "5, 6.220960574e-16",
        "10, 3.167222842e-05",
        "15, 0.003862051809",
        "20, 0.02410002998",
        "25, 0.06299682762"
    })
    void aBiasMakesTheCellLopsided(double spreadCents, double miss01) {
        double atMm = 300;
        NoteChance chance =
                NoteChance.of(7, atMm, atMm - 60 / CENTS_PER_MM, atMm + 40 / CENTS_PER_MM, spreadCents / CENTS_PER_MM);
        assertEquals(miss01, chance.miss01(), RELATIVE * miss01);
    }

    /** E. W. Weisstein, CRC Concise Encyclopedia of Mathematics, 1999, Confidence Interval: 1, 2, 3 sigma. */
    @ParameterizedTest
    @CsvSource({"1, 0.6826895", "2, 0.9544997", "3, 0.9973002"})
    void withinOneTwoAndThreeSpreadsAreThePublishedShares(double z, double within01) {
        assertEquals(
                1 - within01, NoteChance.of(0, 200, 200 - z * 8, 200 + z * 8, 8).miss01(), PUBLISHED);
    }

    /**
     * Minor pentatonic from A at 6 cents/mm: C has A 50 mm below and D 33.3 mm above, so 25 and 16.7 mm to its
     * boundaries. With a spread of 16.7 mm that is Q(1.5) + Q(1) = 0.1336144025 / 2 + 0.3173105079 / 2 (two-sided tails
     * after M. Abramowitz, I. A. Stegun, Handbook of Mathematical Functions, 1964, table 26.1).
     */
    @ParameterizedTest
    @ValueSource(strings = {"HIGH_FAR", "HIGH_NEAR"})
    void anUnevenScaleHasLopsidedCells(String direction) {
        Tuning tuning = Tuning.usual()
                .withScale(Scales.named("minor-pentatonic"))
                .with(new PitchRange(57, 81, Direction.valueOf(direction), 0));
        NoteChance c = NoteChance.of(AdviceRooms.exact(), tuning, new Aim(50.0 / 3, 10))
                .get(1);
        boolean far = tuning.direction() == Direction.HIGH_FAR;
        assertEquals(far ? 150 : 450, c.atMm(), TINY_MM);
        assertEquals(far ? 25 : 50.0 / 3, c.atMm() - c.nearMm(), TINY_MM);
        assertEquals(far ? 50.0 / 3 : 25, c.farMm() - c.atMm(), TINY_MM);
        assertEquals(0.1336144025 / 2 + 0.3173105079 / 2, c.miss01(), 1e-9);
    }

    /**
     * A player is simulated another way round: where the hand goes is drawn from three normal distributions (aim, map,
     * wobble), held to the zone, sent through the curve, and what is heard is compared with what was asked. A share p
     * of n reaches has a standard error of sqrt(p (1 - p) / n); four of them are allowed.
     */
    @ParameterizedTest
    @CsvSource({
        "chromatic, 57, 69, HIGH_FAR, 0",
        "minor-pentatonic, 57, 81, HIGH_NEAR, 1.2",
        "rast, 57, 79, HIGH_FAR, -0.8"
    })
    void aSimulatedPlayerMissesAsOften(String scale, int low, int high, Direction direction, double warp) {
        Tuning tuning = Tuning.usual().withScale(Scales.named(scale)).with(new PitchRange(low, high, direction, warp));
        Room room = AdviceRooms.plain();
        Aim aim = new Aim(9, 10);
        HandSetup hand = room.pitch();
        Zone zone = hand.zone();
        SmoothSettings smoothing =
                SmoothSettings.reaching(hand.noiseMm(), room.ratePerS(), 5 / tuning.centsPerMm(zone.lengthMm()));
        ScaleLadder ladder = tuning.ladder();
        PitchCurve curve = tuning.curve();
        List<NoteChance> chances = NoteChance.of(room, tuning, aim);
        assertTrue(NoteChance.worst(chances).miss01() > 0.05, "nothing to compare");
        Random random = new Random(20);
        int reaches = 100_000;
        for (NoteChance chance : chances) {
            double key = ladder.key(chance.note());
            double place = curve.place01(key);
            double centsPerMm = tuning.centsPerMm(zone.lengthMm(), place);
            double mapMm = PitchBudget.at(hand, place, centsPerMm).standardCents() / centsPerMm;
            int missed = 0;
            for (int i = 0; i < reaches; i++) {
                double mm = zone.mm(place)
                        + aim.mm() * random.nextGaussian()
                        + mapMm * random.nextGaussian()
                        + smoothing.jitterMm() * random.nextGaussian();
                if (ladder.nearest(curve.key(zone.place01(mm))) != chance.note()) {
                    missed++;
                }
            }
            double expected = chance.miss01();
            double standardError = Math.sqrt(expected * (1 - expected) / reaches);
            assertEquals(expected, (double) missed / reaches, 4 * standardError, "note " + chance.note());
        }
    }

    @Test
    void theOnlyNoteOfARangeIsNeverMissed() {
        Tuning tuning =
                Tuning.usual().withScale(Scales.named("minor-pentatonic")).withRange(58, 61);
        List<NoteChance> chances = NoteChance.of(AdviceRooms.plain(), tuning, Aim.ASSUMED);
        assertEquals(1, chances.size());
        assertEquals(0, chances.get(0).miss01());
    }
}
