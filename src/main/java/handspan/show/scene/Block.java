package handspan.show.scene;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** A piece of a page. */
public sealed interface Block {
    /**
     * What the player is asked for, to be read from across the room.
     *
     * @param words few
     * @param under a line below, smaller; may be empty
     */
    record Prompt(String words, String under) implements Block {}

    /** What a page is about. */
    record Heading(String words) implements Block {}

    /**
     * A ring that fills.
     *
     * @param fill01 how much of it
     * @param inside a word or a figure in it
     * @param why what keeps it from filling; empty when nothing does
     * @param beside a chart that is shown beside it while there is nothing to say why; empty for none
     */
    record Ring(double fill01, String inside, String why, Optional<Sight> beside) implements Block {
        /** Checks the share. */
        public Ring {
            if (!(fill01 >= 0 && fill01 <= 1)) {
                throw new IllegalArgumentException("ring filled to " + fill01 + " (0..1)");
            }
        }

        /** A ring alone. */
        public Ring(double fill01, String inside, String why) {
            this(fill01, inside, why, Optional.empty());
        }

        /** The same with a chart beside it. */
        Ring beside(Optional<Sight> chart) {
            return new Ring(fill01, inside, why, chart);
        }
    }

    /** A line or more of words. */
    record Words(Tone tone, String text) implements Block {}

    /**
     * A row of a table.
     *
     * @param cells as many as the table has heads
     * @param wish what choosing it fulfils; empty for nothing
     * @param tip more about it; may be empty
     */
    record Row(List<String> cells, Optional<Wish> wish, String tip) {
        /** Copies the cells. */
        public Row {
            cells = List.copyOf(cells);
        }
    }

    /**
     * A table.
     *
     * @param name for those who hear the screen
     * @param heads of the columns
     * @param rows of as many cells each
     */
    record Table(String name, List<String> heads, List<Row> rows) implements Block {
        /** Copies the lists and counts the cells. */
        public Table {
            heads = List.copyOf(heads);
            rows = List.copyOf(rows);
            for (Row row : rows) {
                if (row.cells().size() != heads.size()) {
                    throw new IllegalArgumentException(
                            row.cells().size() + " cells under " + heads.size() + " heads in '" + name + "'");
                }
            }
        }
    }

    /**
     * Something to fill in or to choose.
     *
     * @param ask what
     * @param label before it
     * @param value it has
     * @param choices to choose from; empty where anything can be written
     * @param unit after it; may be empty
     * @param tip what it means, with its unit and what is allowed
     */
    record Field(Ask ask, String label, String value, List<String> choices, String unit, String tip) {
        /** Copies the choices. */
        public Field {
            choices = List.copyOf(choices);
        }
    }

    /** Things to fill in, side by side. */
    record Fields(List<Field> fields) implements Block {
        /** Copies the list. */
        public Fields {
            fields = List.copyOf(fields);
        }
    }

    /** Things that can be done now, side by side. */
    record Offers(List<Offer> offers) implements Block {
        /** Copies the list. */
        public Offers {
            offers = List.copyOf(offers);
        }
    }

    /**
     * Steps, of which some are done.
     *
     * @param names a word or two each
     * @param done how many are
     */
    record Steps(List<String> names, int done) implements Block {
        /** Copies the list. */
        public Steps {
            names = List.copyOf(names);
        }
    }

    /** A chart that moves with the evening. */
    record Live(Sight sight) implements Block {}

    /**
     * A recording that runs, along its time.
     *
     * @param placeS where it stands, seconds from its start
     * @param lengthS its length, s; empty until it is known
     * @param running whether it goes on by itself
     * @param marks of moments in it, in their order
     */
    record TakeBar(double placeS, OptionalDouble lengthS, boolean running, List<BarMark> marks) implements Block {
        /** Copies the marks. */
        public TakeBar {
            marks = List.copyOf(marks);
        }

        /** The place in words: {@code 2:15 of 12:30}. */
        public String words() {
            return Moments.words(placeS) + (lengthS.isPresent() ? " of " + Moments.words(lengthS.getAsDouble()) : "");
        }
    }

    /**
     * A moment of a recording.
     *
     * @param atS seconds from its start
     * @param words what it is
     */
    record BarMark(double atS, String words) {}

    /** Things that can be done by their keys, told in one line. */
    record Keys(List<Offer> offers) implements Block {
        /** Copies the list. */
        public Keys {
            offers = List.copyOf(offers);
        }

        /** The line. */
        public String words() {
            return offers.stream()
                    .filter(Offer::isPossible)
                    .map(offer -> offer.keyWords() + "  " + offer.words())
                    .collect(Collectors.joining("   \u00b7   "));
        }
    }

    /** What a player sees on stage. */
    record Stage(StageView view) implements Block {}
}
