package handspan.wiring.evening;

import handspan.music.tuning.Tuning;
import handspan.profile.KeptRoom;
import handspan.profile.RoomProfile;
import java.util.List;
import java.util.Optional;

/**
 * The rooms, and the one that is worked on.
 *
 * @param kept rooms, by name
 * @param name of the next room that is made
 * @param profile that is worked on; empty until one is loaded or made
 * @param unsaved whether it differs from its file
 * @param news what became of the last load or save, in words
 * @param trouble what went wrong, in words with what to do; empty when nothing did
 * @param tuning name of the one of its tunings that is worked on; the first where it has none of that name
 * @param look a kept room that is looked at more closely
 */
public record Keeping(
        List<KeptRoom> kept,
        String name,
        Optional<RoomProfile> profile,
        boolean unsaved,
        String news,
        String trouble,
        String tuning,
        Optional<RoomLook> look) {
    /** Copies the list. */
    public Keeping {
        kept = List.copyOf(kept);
    }

    /** Nothing is looked at more closely, and the first tuning is worked on. */
    public Keeping(
            List<KeptRoom> kept,
            String name,
            Optional<RoomProfile> profile,
            boolean unsaved,
            String news,
            String trouble) {
        this(kept, name, profile, unsaved, news, trouble, "", Optional.empty());
    }

    /** Names of the rooms that are kept. */
    public List<String> rooms() {
        return kept.stream().map(KeptRoom::name).toList();
    }

    /** Name of the room that is worked on; empty where there is none. */
    public String held() {
        return profile.map(room -> room.room().name()).orElse("");
    }

    /** The tuning that is worked on; empty where there is no room. */
    public Optional<Tuning> edited() {
        return profile.map(room -> room.tunings().stream()
                .filter(each -> each.name().equals(tuning))
                .findFirst()
                .orElse(room.tunings().get(0)));
    }

    Keeping listing(List<KeptRoom> all) {
        return new Keeping(all, name, profile, unsaved, news, trouble, tuning, look);
    }

    Keeping named(String other) {
        return new Keeping(kept, other, profile, unsaved, news, "", tuning, look);
    }

    Keeping holding(RoomProfile other, boolean changed, String words) {
        return new Keeping(kept, other.room().name(), Optional.of(other), changed, words, "", tuning, look);
    }

    Keeping editing(String one) {
        return new Keeping(kept, name, profile, unsaved, news, "", one, look);
    }

    Keeping looking(Optional<RoomLook> closer) {
        return new Keeping(kept, name, profile, unsaved, "", "", tuning, closer);
    }

    Keeping seeing(RoomLook anew) {
        return new Keeping(kept, name, profile, unsaved, news, trouble, tuning, Optional.of(anew));
    }

    Keeping told(String words) {
        return new Keeping(kept, name, profile, unsaved, words, "", tuning, look);
    }

    Keeping troubled(String words) {
        return new Keeping(kept, name, profile, unsaved, "", words, tuning, look);
    }
}
