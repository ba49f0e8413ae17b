package handspan.music.send;

/** What channels said last, in the order in which a plan names them. Immutable. */
public final class ChannelValues {
    /** Of a plan that names no channel. */
    public static final ChannelValues NONE = new ChannelValues(new double[0], new double[0]);

    private final double[] raw;
    private final double[] physical;

    /**
     * Values of channels.
     *
     * @param raw the number that was printed; NaN for none; kept, not copied
     * @param physical in the unit of its sensor; NaN for none; kept, not copied
     */
    public ChannelValues(double[] raw, double[] physical) {
        this.raw = raw;
        this.physical = physical;
    }

    /** The number that was printed; NaN for none. */
    public double raw(int channel) {
        return channel >= 0 && channel < raw.length ? raw[channel] : Double.NaN;
    }

    /** The same in the physical unit of its sensor; NaN for none. */
    public double physical(int channel) {
        return channel >= 0 && channel < physical.length ? physical[channel] : Double.NaN;
    }
}
