package handspan.show.window;

import java.awt.Component;
import java.awt.Container;
import java.util.ArrayList;
import java.util.List;

/** What tests that draw pages without a screen share. */
final class Panes {
    private Panes() {}

    /** Lays all out that is in it, which a window that is not shown does not do by itself. */
    static void layOut(Component component) {
        component.doLayout();
        if (component instanceof Container container) {
            for (Component child : container.getComponents()) {
                layOut(child);
            }
        }
    }

    /** All of a kind that is in it, at any depth. */
    static <T> List<T> all(Container container, Class<T> kind) {
        List<T> found = new ArrayList<>();
        for (Component child : container.getComponents()) {
            if (kind.isInstance(child)) {
                found.add(kind.cast(child));
            }
            if (child instanceof Container inner) {
                found.addAll(all(inner, kind));
            }
        }
        return found;
    }
}
