package handspan.music.tuning;

/** Leaves pitch as it is. */
record FreeSnapper() implements Snapper {
    @Override
    public void onReading(double key, long timeNanos) {
        // nothing to decide
    }

    @Override
    public double sounding(double key, long timeNanos) {
        return key;
    }

    @Override
    public void reset() {
        // nothing to forget
    }
}
