package handspan.wiring;

import handspan.outside.osc.remote.Allowance;
import handspan.wiring.RemoteNews.Fate;
import java.net.InetSocketAddress;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What has come to the remote control: counted all, and told in words as often as somebody may want to read it. May be
 * used by any thread.
 */
final class RemoteBook {
    private static final double TOLD_PER_S = 1;
    private static final double TOLD_AT_ONCE = 5;
    private static final int MOST_WAITING = 100;

    /** One fate. */
    private static final class Page {
        private final Allowance told = new Allowance(TOLD_PER_S, TOLD_AT_ONCE);
        private long count;
        private long untold;
    }

    private final Map<Fate, Page> pages = new EnumMap<>(Fate.class);
    private final List<RemoteNews> waiting = new ArrayList<>();
    private long packets;

    RemoteBook() {
        for (Fate fate : Fate.values()) {
            pages.put(fate, new Page());
        }
    }

    private Page page(Fate fate) {
        Page page = pages.get(fate);
        if (page == null) {
            throw new IllegalStateException("a fate without a page: " + fate);
        }
        return page;
    }

    synchronized void onPacket() {
        packets++;
    }

    synchronized void note(Fate fate, String what, InetSocketAddress from, long timeNanos) {
        Page page = page(fate);
        page.count++;
        if (waiting.size() < MOST_WAITING && page.told.take(timeNanos)) {
            waiting.add(new RemoteNews(fate, what, Peer.words(from), page.untold));
            page.untold = 0;
        } else {
            page.untold++;
        }
    }

    /** What is to be told since the last call. */
    synchronized List<RemoteNews> take() {
        List<RemoteNews> news = List.copyOf(waiting);
        waiting.clear();
        return news;
    }

    /** Packets that came. */
    synchronized long packets() {
        return packets;
    }

    /** How many had a fate. */
    synchronized long count(Fate fate) {
        return page(fate).count;
    }
}
