package handspan.outside.simulate;

/**
 * Speed of sound in the simulated room: {@code c = 331.3 sqrt(1 + T / 273.15)} m/s with T in degrees Celsius; dry air
 * as an ideal gas, the form common in application notes for echo sensors.
 */
final class AirSound {
    private AirSound() {}

    static double metresPerSecond(double celsius) {
        return 331.3 * Math.sqrt(1 + celsius / 273.15);
    }
}
