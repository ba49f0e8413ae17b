package handspan.wiring;

import handspan.instrument.survey.ChannelReport;
import handspan.live.session.ActivityView;
import handspan.live.session.Command;
import handspan.live.session.LinkException;
import handspan.profile.RoomProfile;
import java.io.IOException;
import java.util.List;

/** What a survey says of a recording, read to its end. */
public final class TakeSurvey {
    private TakeSurvey() {}

    /**
     * Surveys the channels that a room's hands play on.
     *
     * @return a report for each; empty when no reading came
     */
    public static List<ChannelReport> of(Source take, SourceOptions options, RoomProfile profile)
            throws LinkException, IOException {
        var instrument = profile.room().instrument();
        try (Rig rig = Rigs.open(take, options.fast(), instrument.shape(), List.of(), null)) {
            rig.submit(new Command.Survey(
                    instrument.channels(), instrument.sensors(profile.room().air())));
            rig.follow(snapshot -> snapshot.activity() instanceof ActivityView.Surveying);
            rig.submit(new Command.Stop());
            if (!rig.snapshot().done()) {
                rig.follow(snapshot -> !snapshot.done());
            }
            return rig.snapshot().activity() instanceof ActivityView.Surveying surveyed
                    ? surveyed.reports()
                    : List.of();
        }
    }
}
