package handspan.command;

import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.number.units.Figures;
import handspan.wiring.RemoteControl;
import handspan.wiring.RemoteInstrument;
import handspan.wiring.RemoteNews;
import handspan.wiring.RemoteNews.Fate;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Says what comes to the remote control. */
final class RemoteTalk implements AutoCloseable {
    private final Talk talk;
    private final RemoteControl remote;
    private final Set<Fate> logged = EnumSet.noneOf(Fate.class);
    private String toldTrouble = "";

    RemoteTalk(Talk talk, RemoteControl remote) {
        this.talk = talk;
        this.remote = remote;
    }

    /** Obeys from now on. */
    void obey(List<RemoteInstrument> instruments) {
        List<String> prefixes = remote.obey(instruments);
        boolean alone = prefixes.size() == 1;
        String words = "remote control: obeys " + (alone ? prefixes.get(0) : RemoteControl.ROOT + "NAME/") + "... on "
                + remote.point().words()
                + (alone ? "" : ", NAME one of " + String.join(", ", names(prefixes)) + "; * is all");
        talk.say(words);
        if (!remote.point().isPrivate()) {
            talk.warn("caution: whoever reaches this machine can open the sound");
        }
        talk.log().note(words);
        talk.event(
                "remoteOpen",
                Map.of(
                        "at", remote.point().address().getHostAddress(),
                        "port", remote.point().port(),
                        "prefix", alone ? prefixes.get(0) : RemoteControl.ROOT));
    }

    /** As they stand in addresses: a blank in an instrument's name is none there. */
    private static List<String> names(List<String> prefixes) {
        return prefixes.stream()
                .map(prefix -> prefix.substring(RemoteControl.ROOT.length(), prefix.length() - 1))
                .distinct()
                .toList();
    }

    /** Says what has come since the last look. */
    void look() {
        for (RemoteNews news : remote.news()) {
            if (logged.add(news.fate())) {
                talk.log().note("remote control: first " + words(news));
            }
            tell(news);
        }
        if (!remote.trouble().equals(toldTrouble)) {
            toldTrouble = remote.trouble();
            talk.warn("remote control: " + toldTrouble);
        }
    }

    private void tell(RemoteNews news) {
        talk.event(
                "remote",
                Map.of(
                        "fate", news.fate().word(),
                        "what", news.what(),
                        "from", news.from(),
                        "more", news.more()));
        if (news.fate() == Fate.OBEYED) {
            talk.say("remote: " + words(news));
        } else if (news.fate() != Fate.ANSWERED) {
            talk.warn("remote: " + words(news));
        }
    }

    private static String words(RemoteNews news) {
        String more = news.more() == 0 ? "" : " (and " + news.more() + " more meanwhile)";
        return news.fate().word() + ", " + news.from() + ": " + news.what() + more;
    }

    /**
     * The counters.
     *
     * @param end to whom they are told too
     */
    ObjectNode counters(Talk end) {
        ObjectNode node = Talk.node();
        node.put("packets", remote.packets());
        for (Fate fate : Fate.values()) {
            node.put(fate.word(), remote.count(fate));
        }
        end.say("remote control: packets " + Figures.count(remote.packets()) + ", orders obeyed "
                + Figures.count(remote.count(Fate.OBEYED)) + ", answered "
                + Figures.count(remote.count(Fate.ANSWERED)));
        return node;
    }

    @Override
    public void close() {
        remote.close();
    }
}
