package handspan.music.tuning;

import java.util.Locale;

/** How far a note of a scale lies above its tonic. */
public sealed interface ScaleStep {
    /** Cents above the tonic in a temperament. */
    double cents(Temperament temperament);

    /** As written in files: {@code 386.3} is cents, {@code 5/4} a ratio. */
    String text();

    /**
     * One of the twelve usual notes: goes where the temperament puts it.
     *
     * @param semitones 0..11
     */
    record Semitones(int semitones) implements ScaleStep {
        /** Checks the number. */
        public Semitones {
            if (semitones < 0 || semitones > 11) {
                throw new IllegalArgumentException("scale step of " + semitones + " semitones (0..11)");
            }
        }

        @Override
        public double cents(Temperament temperament) {
            return temperament.cents(semitones);
        }

        @Override
        public String text() {
            return Integer.toString(100 * semitones);
        }
    }

    /**
     * A size in cents: the same in any temperament.
     *
     * @param cents 0 or more, below 1200
     */
    record InCents(double cents) implements ScaleStep {
        @Override
        public double cents(Temperament temperament) {
            return cents;
        }

        @Override
        public String text() {
            return String.format(Locale.ROOT, cents == Math.rint(cents) ? "%.0f" : "%s", cents);
        }
    }

    /**
     * A frequency ratio: the same in any temperament.
     *
     * @param ratio 1/1 or more, below 2/1
     */
    record InRatio(Ratio ratio) implements ScaleStep {
        @Override
        public double cents(Temperament temperament) {
            return ratio.cents();
        }

        @Override
        public String text() {
            return ratio.text();
        }
    }

    /**
     * The step that a text stands for.
     *
     * @param text cents with or without decimals, or a ratio
     * @throws IllegalArgumentException when it is neither
     */
    static ScaleStep parse(String text) {
        int slash = text.indexOf('/');
        try {
            return slash < 0
                    ? new InCents(Double.parseDouble(text))
                    : new InRatio(new Ratio(
                            Integer.parseInt(text.substring(0, slash).strip()),
                            Integer.parseInt(text.substring(slash + 1).strip())));
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException(
                    "scale step '" + text + "' (cents or a ratio): write it like 386.3 or 5/4", e);
        }
    }
}
