package handspan.show.report;

/**
 * A page of the handbook.
 *
 * @param name as it is asked for, one word
 * @param title its heading
 * @param about what it is for, one line
 * @param markdown the whole page as it is written
 */
public record HandbookTopic(String name, String title, String about, String markdown) {
    private static final String HEADING = "# ";

    /** A page begins with its heading, a blank line and one line that says what it is for. */
    static HandbookTopic of(String name, String markdown) {
        String[] lines = markdown.split("\n", 4);
        if (lines.length < 4
                || !lines[0].startsWith(HEADING)
                || !lines[1].isEmpty()
                || lines[2].isBlank()
                || !lines[3].startsWith("\n")) {
            throw new IllegalArgumentException("handbook page '" + name
                    + "' (a heading, a blank line, one line of what it is for, a blank line): write it so");
        }
        return new HandbookTopic(name, lines[0].substring(HEADING.length()), lines[2], markdown);
    }

    /** The page for people to read, in lines of at most so many characters; commands are never broken. */
    public String text(int columns) {
        return PlainPage.of(markdown).text(columns);
    }
}
