package handspan.show.report;

import handspan.music.tuning.Tuning;
import handspan.profile.RoomProfile;
import handspan.room.budget.FeelBudget;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * What a report says of a room, without a page or a file: head and verdicts, where the notes lie, what was measured,
 * what is uncertain, what takes time, cautions.
 *
 * @param title its heading
 * @param foot what stands at the foot of each page
 * @param parts in their order
 * @param notes figures of the note table
 */
public record RoomReport(String title, String foot, List<ReportPart> parts, List<NoteFigures> notes) {
    /** Copies the lists. */
    public RoomReport {
        parts = List.copyOf(parts);
        notes = List.copyOf(notes);
    }

    /**
     * The report of a room under one of its tunings.
     *
     * @param madeOn the day on which it is written
     */
    public static RoomReport of(RoomProfile profile, Tuning tuning, LocalDate madeOn) {
        List<NoteFigures> notes = NoteFigures.of(profile, tuning);
        FeelBudget feel = FeelBudget.of(profile.room(), tuning);
        List<ReportPart> parts = new ArrayList<>(new ReportHead(profile, tuning, feel, madeOn).parts());
        parts.addAll(new ReportNotes(profile, tuning, notes).parts());
        parts.addAll(new ReportMeasured(profile, tuning, feel).parts());
        parts.addAll(new ReportBudgets(profile, tuning, feel).parts());
        parts.addAll(Cautions.parts());
        String measured = ReportDate.of(profile.room().calibratedAt());
        return new RoomReport(
                "Room " + profile.room().name(),
                "Handspan report, room " + profile.room().name() + ", tuning '" + tuning.name() + "', measured "
                        + measured,
                parts,
                notes);
    }
}
