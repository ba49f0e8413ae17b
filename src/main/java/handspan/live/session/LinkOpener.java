package handspan.live.session;

/** Opens a board's link, and opens it again after a loss: each time with fresh means, never an old port object. */
public interface LinkOpener {
    /**
     * Opens it.
     *
     * @throws LinkException saying why not and what to do
     */
    Link open() throws LinkException;

    /** What is opened, as the player named it. */
    String name();
}
