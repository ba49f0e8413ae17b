package handspan.outside.simulate;

/**
 * From one moment on the room's light is another.
 *
 * @param atNanos the moment
 * @param factor on the room's own light, 0..1000; 1 = as at first
 */
public record LightChange(long atNanos, double factor) {
    public LightChange {
        Allowed.within("change of light", factor, 0, 1000, "times");
    }
}
