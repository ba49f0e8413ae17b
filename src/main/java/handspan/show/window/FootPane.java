package handspan.show.window;

import handspan.show.scene.Screen;
import java.awt.Font;
import java.util.ArrayList;
import java.util.List;
import javax.swing.Box;

/** Short words along the foot: link, sound, room, and what is being done meanwhile. */
final class FootPane extends FlowingPane {
    private static final long serialVersionUID = 1;

    private static final int EDGE_PX = 8;

    private final transient Looks looks;
    private final transient List<WrappedText> words = new ArrayList<>();
    private transient List<Screen.Status> shown = List.of();

    FootPane(Looks looks) {
        super(looks.px(20));
        this.looks = looks;
        setOpaque(true);
        setBackground(looks.ink(Ink.RAISED));
        add(Box.createHorizontalStrut(looks.px(EDGE_PX)));
    }

    void show(List<Screen.Status> status) {
        if (status.equals(shown)) {
            return;
        }
        shown = status;
        while (words.size() < status.size()) {
            WrappedText text = WrappedText.ofOneLine(looks.font(Font.PLAIN, Letters.CONTROL));
            words.add(text);
            add(text);
        }
        for (int i = 0; i < status.size(); i++) {
            Screen.Status one = status.get(i);
            String said = one.what().isEmpty() ? one.words() : one.what() + ": " + one.words();
            words.get(i)
                    .show(
                            said,
                            looks.ink(Ink.TEXT),
                            one.words().isEmpty() ? null : looks.mark(one.tone()),
                            Looks.sign(one.tone()));
        }
        revalidate();
        repaint();
    }
}
