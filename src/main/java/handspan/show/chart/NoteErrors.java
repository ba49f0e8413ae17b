package handspan.show.chart;

import java.util.List;

/**
 * How far one note was missed, for a chart.
 *
 * @param key where it is, as a key number
 * @param name as it sounds
 * @param meanCents mean of all its time
 * @param spreadCents standard deviation of all its time
 * @param visitsCents mean of each time it was played
 */
public record NoteErrors(double key, String name, double meanCents, double spreadCents, List<Double> visitsCents) {
    /** Copies the list. */
    public NoteErrors {
        visitsCents = List.copyOf(visitsCents);
    }

    /**
     * The notes of one take, or of one hand.
     *
     * @param name for the legend
     * @param notes in any order
     */
    public record Layer(String name, List<NoteErrors> notes) {
        /** Copies the list. */
        public Layer {
            notes = List.copyOf(notes);
        }
    }
}
