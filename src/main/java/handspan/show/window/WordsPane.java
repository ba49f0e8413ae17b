package handspan.show.window;

import handspan.show.scene.Block;
import handspan.show.scene.Tone;
import java.awt.BorderLayout;
import java.awt.Font;
import javax.swing.JPanel;

/** Words, and prompts that are to be read from across the room. */
final class WordsPane extends JPanel implements BlockPane, Fitting {
    private static final long serialVersionUID = 1;
    /** A prompt has some this many letters on a line, and is no larger than that. */
    private static final int LETTERS_A_LINE = 13;

    private final transient Looks looks;
    private final boolean prompt;
    private final boolean heading;
    private final boolean keys;
    private final WrappedText words;
    private final WrappedText under;

    /** Words of the kind that a block has. */
    static WordsPane of(Looks looks, Block block) {
        return new WordsPane(
                looks, block instanceof Block.Prompt, block instanceof Block.Heading, block instanceof Block.Keys);
    }

    private WordsPane(Looks looks, boolean prompt, boolean heading, boolean keys) {
        super(new BorderLayout());
        setOpaque(false);
        this.looks = looks;
        this.prompt = prompt;
        this.heading = heading;
        this.keys = keys;
        this.words = new WrappedText(
                prompt
                        ? looks.font(Font.BOLD, Letters.PROMPT)
                        : heading ? looks.font(Font.BOLD, Letters.HEADING) : looks.font(Font.PLAIN, Letters.WORDS));
        this.under = new WrappedText(looks.font(Font.PLAIN, Letters.UNDER));
        add(words, BorderLayout.CENTER);
        if (prompt) {
            add(under, BorderLayout.SOUTH);
        }
    }

    @Override
    public boolean takes(Block block) {
        return prompt
                ? block instanceof Block.Prompt
                : heading
                        ? block instanceof Block.Heading
                        : keys ? block instanceof Block.Keys : block instanceof Block.Words;
    }

    @Override
    public void show(Block block) {
        if (block instanceof Block.Prompt asked) {
            words.show(asked.words(), looks.ink(Ink.TEXT), null, "");
            under.show(asked.under(), looks.ink(Ink.QUIET_TEXT), null, "");
        } else if (block instanceof Block.Heading head) {
            words.show(head.words(), looks.ink(Ink.TEXT), null, "");
        } else if (block instanceof Block.Keys line) {
            words.show(line.words(), looks.ink(Ink.QUIET_TEXT), null, "");
        } else if (block instanceof Block.Words said) {
            boolean plain = said.tone() == Tone.PLAIN || said.tone() == Tone.QUIET;
            words.show(
                    said.text(),
                    looks.text(said.tone()),
                    plain ? null : looks.mark(said.tone()),
                    Looks.sign(said.tone()));
        }
    }

    @Override
    public int heightFor(int widthPx) {
        if (prompt) {
            float size = Math.min(looks.px(Letters.PROMPT), (float) widthPx / LETTERS_A_LINE);
            words.letters(looks.atLeastSmall(Font.BOLD, size));
        }
        return words.heightFor(widthPx) + (prompt ? under.heightFor(widthPx) : 0);
    }
}
