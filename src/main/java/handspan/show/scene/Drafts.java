package handspan.show.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a player has written that nothing has come of yet.
 *
 * @param notes to be held by ear for the next room, parted by commas; empty for none
 * @param reaches whether ten unaided reaches follow its holds
 * @param refused what could not be so
 * @param further whether the page shows what is more seldom asked for
 */
public record Drafts(String notes, boolean reaches, Optional<Refused> refused, boolean further) {
    /** Nothing is written. */
    public static final Drafts NONE = new Drafts("", false, Optional.empty(), false);

    /**
     * Something that could not be so: it stays in its field, and beside it is said why.
     *
     * @param ask what was asked for
     * @param value as it was written
     * @param reason why not, with what is allowed
     */
    public record Refused(Ask ask, String value, String reason) {}

    Drafts withNotes(String written) {
        return new Drafts(written, reaches, refused, further);
    }

    Drafts reaching(boolean on) {
        return new Drafts(notes, on, refused, further);
    }

    Drafts refusing(Ask ask, String value, Optional<String> reason) {
        return new Drafts(notes, reaches, reason.map(why -> new Refused(ask, value, why)), further);
    }

    Drafts showingFurther(boolean on) {
        return new Drafts(notes, reaches, refused, on);
    }

    /** What stands in a field: what was refused there, else its value. */
    String value(Ask ask, String value) {
        return refused.filter(no -> no.ask() == ask).map(Refused::value).orElse(value);
    }

    /** The same fields, with what was refused left in its own, and below them why. */
    List<Block> under(List<Block.Field> fields) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Fields(fields.stream()
                .map(field -> new Block.Field(
                        field.ask(),
                        field.label(),
                        value(field.ask(), field.value()),
                        field.choices(),
                        field.unit(),
                        field.tip()))
                .toList()));
        refused.filter(no -> fields.stream().anyMatch(field -> field.ask() == no.ask()))
                .ifPresent(no -> blocks.add(new Block.Words(Tone.BAD, WindowWords.of(no.reason()))));
        return blocks;
    }
}
