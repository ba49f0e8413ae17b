package handspan.music.practice;

import handspan.number.units.Figures;
import java.util.ArrayList;
import java.util.List;

/** Practice as it is told to a player. */
public final class PracticeInWords {
    /** Nearer than this there is no way to show, mm: about what a held hand wanders. */
    private static final double THERE_MM = 3;

    private PracticeInWords() {}

    /** What a run was worth, a line for each thing. */
    public static List<String> of(Tally tally) {
        List<String> lines = new ArrayList<>();
        lines.add(tally.hits() + " of " + tally.asked() + " notes hit (" + Figures.text(100 * tally.hit01(), 0)
                + " %), " + tally.reached() + " reached");
        tally.accuracy().ifPresent(accuracy -> lines.add(of(accuracy)));
        tally.best()
                .ifPresent(best -> tally.worst()
                        .filter(worst -> !worst.equals(best))
                        .ifPresent(worst -> lines.add("best: " + of(best) + "; worst: " + of(worst))));
        return lines;
    }

    private static String of(Accuracy accuracy) {
        return "off by " + Figures.text(accuracy.rmsCents(), 0) + " cents rms (" + Figures.text(accuracy.rmsMm(), 1)
                + " mm), on average " + mean(accuracy.meanCents()) + "; "
                + Figures.text(accuracy.medianSeconds(), 1) + " s a note (median)";
    }

    private static String mean(double cents) {
        String figure = Figures.text(Math.abs(cents), 0);
        return figure.equals("0") ? "neither high nor low" : figure + " cents too " + (cents > 0 ? "high" : "low");
    }

    private static String of(NoteTally note) {
        return note.name() + " (" + note.hits() + " of " + note.asked()
                + (note.reached() == 0 ? "" : ", " + Figures.text(note.rmsCents(), 0) + " cents rms") + ")";
    }

    /**
     * What became of a note, in a line.
     *
     * @param otherwise where the hand came to no rest
     */
    public static String of(Attempt attempt, String otherwise) {
        return verdict(attempt) + attempt.stop().map(stop -> ", " + more(stop)).orElse(": " + otherwise);
    }

    /** Whether a note was found, and how far off in cents. */
    public static String verdict(Attempt attempt) {
        return (attempt.isHit() ? "found " : "missed ")
                + attempt.wanted().name()
                + attempt.stop()
                        .map(stop -> ": " + off(stop.offCents(), "cents", "high", "low"))
                        .orElse("");
    }

    /** How far off it was in mm, and after what time. */
    public static String more(Stop stop) {
        return off(stop.offMm(), "mm", "too far", "too near") + ", " + Figures.text(stop.seconds(), 1) + " s";
    }

    private static String off(double value, String unit, String above, String below) {
        String figure = Figures.text(Math.abs(value), 0);
        return figure + " " + unit + (figure.equals("0") ? "" : " " + (value > 0 ? above : below));
    }

    /** Whether a hand is as good as at its note. */
    public static boolean isThere(double wayMm) {
        return Math.abs(wayMm) < THERE_MM;
    }

    /**
     * The way of the hand to its note, in mm.
     *
     * @param wayMm still to go; positive away from the sensor
     */
    public static String way(double wayMm) {
        return Figures.text(Math.abs(wayMm), 0) + " mm " + (wayMm > 0 ? "further away" : "nearer");
    }
}
