package handspan.music.send;

import java.util.Locale;

/** What an instrument is doing, as the receiver is told. */
public enum PlayState {
    /** A hand plays and sound is let through. */
    PLAYING,
    /** No hand in the zone. */
    AWAY,
    /** The player has closed the sound, or light that no hand can make has. */
    MUTED,
    /** The board does not send. */
    LOST;

    private final String word = name().toLowerCase(Locale.ROOT);

    /** For receivers that take no text: 0 away, 1 playing, 2 muted, 3 lost. */
    public int number() {
        return switch (this) {
            case AWAY -> 0;
            case PLAYING -> 1;
            case MUTED -> 2;
            case LOST -> 3;
        };
    }

    /** The word sent out: {@code playing}, {@code away}, {@code muted} or {@code lost}. */
    public String word() {
        return word;
    }
}
