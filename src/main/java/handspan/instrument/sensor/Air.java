package handspan.instrument.sensor;

/**
 * The air that sound runs through.
 *
 * @param temperatureC -20..50 degrees Celsius
 * @param humidity01 relative humidity, 0..1
 */
public record Air(double temperatureC, double humidity01) {
    /** 20 degrees and 50 %, where nothing else is known. */
    public static final Air USUAL = new Air(20, 0.5);

    private static final double PRESSURE_PA = 101_325;
    private static final double CO2_MOLE_FRACTION = 0.000314;

    /** Checks both. */
    public Air {
        if (!(temperatureC >= -20 && temperatureC <= 50)) {
            throw new IllegalArgumentException("temperature " + temperatureC + " C (-20..50): give the room's own");
        }
        if (!(humidity01 >= 0 && humidity01 <= 1)) {
            throw new IllegalArgumentException("humidity " + humidity01 + " (0..1)");
        }
    }

    /** Air at a temperature with the usual humidity of 50 %. */
    public static Air at(double temperatureC) {
        return new Air(temperatureC, USUAL.humidity01);
    }

    /**
     * Speed of sound in m/s, which is also mm per millisecond.
     *
     * <p>Source: O. Cramer, The variation of the specific heat ratio and the speed of sound in air with temperature,
     * pressure, humidity, and CO2 concentration, J. Acoust. Soc. Am. 93 (1993) 2510-2516, equation and coefficients of
     * p. 2514, stated for 0..30 C; saturation pressure and enhancement factor as given there. At 101325 Pa and 314 ppm
     * of carbon dioxide.
     */
    public double speedOfSoundMPerS() {
        double t = temperatureC;
        double p = PRESSURE_PA;
        double c = CO2_MOLE_FRACTION;
        double kelvin = t + 273.15;
        double saturationPa =
                Math.exp(1.2811805e-5 * kelvin * kelvin - 1.9509874e-2 * kelvin + 34.04926034 - 6353.6311 / kelvin);
        double enhancement = 1.00062 + 3.14e-8 * p + 5.6e-7 * t * t;
        double w = humidity01 * enhancement * saturationPa / p;
        return 331.5024
                + 0.603055 * t
                - 0.000528 * t * t
                + (51.471935 + 0.1495874 * t - 0.000782 * t * t) * w
                + (-1.82e-7 + 3.73e-8 * t - 2.93e-10 * t * t) * p
                + (-85.20931 - 0.228525 * t + 5.91e-5 * t * t) * c
                - 2.835149 * w * w
                - 2.15e-13 * p * p
                + 29.179762 * c * c
                + 0.000486 * w * p * c;
    }
}
