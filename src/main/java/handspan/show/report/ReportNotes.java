package handspan.show.report;

import handspan.music.tuning.Tuning;
import handspan.number.units.Figures;
import handspan.profile.RoomInWords;
import handspan.profile.RoomProfile;
import handspan.room.Room;
import handspan.room.budget.NoteBudget;
import handspan.room.budget.NoteChance;
import handspan.show.chart.Picture;
import java.util.ArrayList;
import java.util.List;

/**
 * Where the notes of a tuning lie: ladder and table.
 *
 * @param profile of the room
 * @param tuning whose notes
 * @param notes their figures
 */
record ReportNotes(RoomProfile profile, Tuning tuning, List<NoteFigures> notes) {
    private static final double LADDER_MM = 92;

    List<ReportPart> parts() {
        Room room = profile.room();
        List<ReportPart> parts = new ArrayList<>();
        parts.add(new ReportPart.Heading("Notes"));
        parts.add(new ReportPart.Chart(
                "Pitch ladder",
                "Pitch against hand travel: the notes of tuning '" + tuning.name() + "' at their places, from "
                        + notes.get(0).name() + " to "
                        + notes.get(notes.size() - 1).name()
                        + ", with the chance to miss each; the figures are in the table of notes.",
                LADDER_MM,
                theme -> Picture.pitchLadder(profile, tuning, NoteChance.of(room, tuning, room.aim()), theme)
                        .low()
                        .chart()));
        parts.add(new ReportPart.Words(legend(room)));
        parts.add(new ReportPart.Grid(
                "Notes of tuning '" + tuning.name() + "'" + (room.pitch().scaledTravel() ? " (mm are nominal)" : ""),
                List.of("note", "Hz", "at mm", "width mm", "missed", "u cents", "95 % cents"),
                notes.stream().map(NoteFigures::row).toList(),
                0));
        parts.addAll(others());
        return parts;
    }

    private String legend(Room room) {
        return "At: place from the sensor. Width: hand travel that belongs to the note; + where a side of it is open beyond"
                + " the zone. Missed: share of unaided reaches that sound another note, with an aim of "
                + room.aim().words()
                + ". u: standard uncertainty of the pitch at the note's place, and its 95 % interval"
                + " (GUM, JCGM 100:2008); wobble is not in it."
                + (room.pitch().scaledTravel()
                        ? " This sensor was calibrated without a ruler: its mm are the hand's travel only in name."
                        : "");
    }

    private List<ReportPart> others() {
        List<String> others = new ArrayList<>();
        for (Tuning other : profile.tunings()) {
            if (!other.equals(tuning)) {
                NoteBudget worst = NoteBudget.worst(NoteBudget.of(profile.room().pitch(), other));
                others.add(RoomInWords.tuning(other, profile.room().pitch().zone()) + "; every note within "
                        + Figures.text(worst.budget().expandedCents(), 0) + " cents (95 %)");
            }
        }
        return others.isEmpty()
                ? List.of()
                : List.of(new ReportPart.Words("Other tunings of this room:"), new ReportPart.Points(others));
    }
}
