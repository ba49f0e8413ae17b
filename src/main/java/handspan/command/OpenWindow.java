package handspan.command;

import handspan.profile.ProfileFolder;
import handspan.show.scene.Guide;
import handspan.show.scene.Showing;
import handspan.show.window.EveningWindow;
import handspan.show.window.WindowMemory;
import handspan.wiring.Cues;
import handspan.wiring.Source;
import handspan.wiring.SourceOptions;
import handspan.wiring.evening.Evening;
import org.jspecify.annotations.Nullable;

/**
 * The desktop program as a verb opens it.
 *
 * @param folder of the rooms
 * @param options how sources are opened
 * @param cues whether there are signals by sound while holds are taken
 * @param room loaded at once; null for none
 * @param source opened at once; null for none
 * @param first what is seen first
 */
record OpenWindow(
        ProfileFolder folder,
        SourceOptions options,
        boolean cues,
        @Nullable String room,
        @Nullable Source source,
        Showing first) {
    /** Shows it where it was last, and waits until it is closed and all is let go. */
    void showAndWait(Talk talk, WindowMemory memory) {
        Cues signals = cues ? Cues.heard(talk::warn) : Cues.silent();
        try (Evening evening = new Evening(folder, talk.log(), signals, options);
                AtExit atExit = AtExit.run(evening::close)) {
            if (room != null) {
                evening.shelf().load(room);
            }
            if (source != null) {
                evening.connecting().open(source);
            }
            new EveningWindow(new Guide(evening, first), memory).showAndWait();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
