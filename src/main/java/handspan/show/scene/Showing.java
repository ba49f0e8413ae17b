package handspan.show.scene;

import handspan.wiring.evening.HoldPurpose;
import java.util.Collection;
import java.util.EnumMap;
import java.util.Map;

/**
 * What of the evening is looked at, and how.
 *
 * @param station that is shown
 * @param dark whether it is dark
 * @param stageOnly whether the stage fills the window
 * @param pitchHelp whether the distance from the note is shown
 * @param patchHeard whether the player has heard the patch
 * @param asked what is asked before something unsaved is let go of
 * @param ruler true distances for the next room, as written; empty for its two ends
 * @param charts which of several is looked at, by station; the first where nothing was chosen
 * @param drafts what is written besides, and nothing has come of yet
 */
public record Showing(
        Station station,
        boolean dark,
        boolean stageOnly,
        boolean pitchHelp,
        boolean patchHeard,
        Asked asked,
        String ruler,
        Map<Station, String> charts,
        Drafts drafts) {
    /** Copies the choices. */
    public Showing {
        charts = Map.copyOf(charts);
    }

    /** What is asked before something unsaved is let go of. */
    public sealed interface Asked {
        /** Nothing is. */
        record Nothing() implements Asked {}

        /** Whether to close all the same. */
        record Closing() implements Asked {}

        /** Whether to load a room all the same. */
        record Loading(String room) implements Asked {}

        /** Whether to bring an earlier version of a room back all the same. */
        record Restoring(String room, int version) implements Asked {}

        /** Whether to take fresh holds all the same. */
        record Measuring(HoldPurpose purpose) implements Asked {}
    }

    /** The first station, in a theme. */
    public static Showing first(boolean dark) {
        return new Showing(Station.ARRIVE, dark, false, true, false, new Asked.Nothing(), "", Map.of(), Drafts.NONE);
    }

    /** Whether it is shown light on dark: where one has it so, and on a stage in any case. */
    public boolean isDark() {
        return dark || isStageAlone();
    }

    /** Whether the stage fills the window. */
    public boolean isStageAlone() {
        return stageOnly && station == Station.PLAY;
    }

    /** At another station, with nothing asked. */
    public Showing at(Station other) {
        return new Showing(
                other,
                dark,
                false,
                pitchHelp,
                patchHeard,
                new Asked.Nothing(),
                ruler,
                charts,
                drafts.showingFurther(false));
    }

    Showing dark(boolean on) {
        return new Showing(station, on, stageOnly, pitchHelp, patchHeard, asked, ruler, charts, drafts);
    }

    Showing stageOnly(boolean on) {
        return new Showing(station, dark, on, pitchHelp, patchHeard, asked, ruler, charts, drafts);
    }

    Showing pitchHelp(boolean on) {
        return new Showing(station, dark, stageOnly, on, patchHeard, asked, ruler, charts, drafts);
    }

    Showing heard(boolean yes) {
        return new Showing(station, dark, stageOnly, pitchHelp, yes, asked, ruler, charts, drafts);
    }

    Showing asking(Asked question) {
        return new Showing(station, dark, stageOnly, pitchHelp, patchHeard, question, ruler, charts, drafts);
    }

    Showing withRuler(String places) {
        return new Showing(station, dark, stageOnly, pitchHelp, patchHeard, asked, places, charts, drafts);
    }

    Showing with(Drafts others) {
        return new Showing(station, dark, stageOnly, pitchHelp, patchHeard, asked, ruler, charts, others);
    }

    /** With a chart chosen at this station. */
    public Showing seeing(String chart) {
        Map<Station, String> chosen = new EnumMap<>(Station.class);
        chosen.putAll(charts);
        chosen.put(station, chart);
        return new Showing(station, dark, stageOnly, pitchHelp, patchHeard, asked, ruler, chosen, drafts);
    }

    /** What is chosen at this station of some, the first of them where nothing was. */
    String seen(Collection<String> choices) {
        String chosen = charts.getOrDefault(station, "");
        return choices.contains(chosen) ? chosen : choices.iterator().next();
    }
}
