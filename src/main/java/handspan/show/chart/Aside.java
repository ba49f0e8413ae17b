package handspan.show.chart;

import java.util.function.Consumer;
import java.util.function.Supplier;

/** Where a chart has something worked out that takes longer than a picture may. */
public interface Aside {
    /**
     * Works something out and hands it to the thread that draws. Of several that wait only the latest is worked out.
     *
     * @param work slow, and needs nothing that changes meanwhile
     * @param taken called by the thread that draws; never where a later work has come between
     */
    <T> void workOut(Supplier<T> work, Consumer<T> taken);

    /** At once, by the thread that asks: for pictures on paper. */
    static Aside atOnce() {
        return new Aside() {
            @Override
            public <T> void workOut(Supplier<T> work, Consumer<T> taken) {
                taken.accept(work.get());
            }
        };
    }
}
