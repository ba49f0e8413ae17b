package handspan.show.scene;

/** The stations of an evening, in the order in which a sound check comes by them. */
public enum Station {
    /** The instrument is plugged in and understood. */
    ARRIVE(1, "Arrive", "Which instrument, what does it send, and which number is which hand?"),
    /** The sound patch is proved to hear. */
    PATCH(2, "Patch", "Where does sound go, and is the patch hearing?"),
    /** Holds are taken with both hands in the air. */
    ROOM(3, "Room", "Where do the hands move tonight, and how bright is it?"),
    /** Key, scale and range are chosen. */
    NOTES(4, "Notes", "Which notes, and can this room hold them?"),
    /** The volume curve is chosen. */
    LEVEL(5, "Level", "How loud at which place?"),
    /** It is played. */
    PLAY(6, "Play", "Play."),
    /** Rooms are kept and brought back. */
    SHELF(7, "Shelf", "Which rooms are kept?");

    private final int number;
    private final String word;
    private final String question;

    Station(int number, String word, String question) {
        this.number = number;
        this.word = word;
        this.question = question;
    }

    /** Its name on the screen. */
    public String word() {
        return word;
    }

    /** What is answered there. */
    public String question() {
        return question;
    }

    /** Its key: Alt and its place from 1. */
    public String key() {
        return "alt " + number;
    }
}
