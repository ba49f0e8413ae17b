package handspan.music.send;

/**
 * How frames become MIDI.
 *
 * @param channel 1..16
 * @param bendSemitones how far the receiver bends a note at most, in semitones either way, 1..96; it has to be set to
 *     the same
 * @param loudness what carries the level
 */
public record MidiForm(int channel, int bendSemitones, Loudness loudness) {
    /** What carries the level. */
    public enum Loudness {
        /** Controller 11. */
        EXPRESSION("expression"),
        /** Controllers 11 and 43, which has its lower seven bits. */
        FINE_EXPRESSION("fine-expression"),
        /** Channel pressure. */
        PRESSURE("pressure");

        private final String word;

        Loudness(String word) {
            this.word = word;
        }

        /** As it is written. */
        public String word() {
            return word;
        }

        /**
         * What a word stands for.
         *
         * @throws IllegalArgumentException naming the words there are
         */
        public static Loudness parse(String word) {
            for (Loudness loudness : values()) {
                if (loudness.word.equals(word)) {
                    return loudness;
                }
            }
            throw new IllegalArgumentException(
                    "loudness '" + word + "' (expression, fine-expression, pressure): name one of these");
        }
    }

    /** Channel 1, two semitones either way (what MIDI 1.0 receivers start with), expression. */
    public static final MidiForm USUAL = new MidiForm(1, 2, Loudness.EXPRESSION);

    /** Checks ranges. */
    public MidiForm {
        if (channel < 1 || channel > 16) {
            throw new IllegalArgumentException("MIDI channel " + channel + " (1..16)");
        }
        if (bendSemitones < 1 || bendSemitones > 96) {
            throw new IllegalArgumentException("bend range " + bendSemitones + " semitones (1..96): 2 or 48 are usual");
        }
    }
}
