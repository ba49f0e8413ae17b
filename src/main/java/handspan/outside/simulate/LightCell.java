package handspan.outside.simulate;

import java.util.Random;

/**
 * A photoresistor, the fixed resistor beside it and a 10-bit converter.
 *
 * <p>Cell: {@code R = R10 (E / 10 lx)^-gamma}, gamma = lg(R10/R100), as photoresistor data sheets define it. Divider:
 * {@code V/Vcc = R/(R+Rf)} with the cell to ground, {@code Rf/(R+Rf)} with the cell to the supply. Counts: {@code 1023
 * V/Vcc}.
 *
 * @param r10Ohm resistance at 10 lux
 * @param gamma steepness, 0.3..1.2
 * @param fixedOhm resistor in series
 * @param side where the cell sits
 */
public record LightCell(double r10Ohm, double gamma, double fixedOhm, Side side) {
    /** Largest count of a 10-bit converter. */
    public static final double FULL_SCALE = 1023;

    private static final double DARKEST_LUX = 1e-4;

    /** Which end of the divider the cell is. */
    public enum Side {
        /** Between supply and converter: counts rise with light. */
        TO_SUPPLY,
        /** Between converter and ground: counts fall with light. */
        TO_GROUND
    }

    public LightCell {
        Allowed.within("resistance at 10 lux", r10Ohm, 100, 1e7, "ohm");
        Allowed.within("cell steepness", gamma, 0.3, 1.2, "decades per decade");
        Allowed.within("fixed resistor", fixedOhm, 100, 1e7, "ohm");
    }

    /**
     * One specimen of a 5 mm cell beside 10 kilohm: 8..20 kilohm at 10 lux, gamma 0.6..0.7 (data sheet limits of part
     * GL5528; gamma from memory).
     */
    public static LightCell seeded(long seed, Side side) {
        Random random = Seeds.random(seed, "light cell");
        return new LightCell(Seeds.between(random, 8_000, 20_000), Seeds.between(random, 0.6, 0.7), 10_000, side);
    }

    /** Resistance of the cell under an illuminance in lux. */
    public double ohm(double lux) {
        return r10Ohm * Math.pow(Math.max(DARKEST_LUX, lux) / 10, -gamma);
    }

    /** Converter counts before rounding, 0..1023, under an illuminance in lux. */
    public double counts(double lux) {
        double ohm = ohm(lux);
        double share01 = (side == Side.TO_GROUND ? ohm : fixedOhm) / (ohm + fixedOhm);
        return FULL_SCALE * share01;
    }
}
