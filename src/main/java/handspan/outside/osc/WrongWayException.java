package handspan.outside.osc;

import java.io.IOException;

/** An address that the target's way does not lead to; the message is meant to be shown as it is. */
final class WrongWayException extends IOException {
    private static final long serialVersionUID = 1;

    WrongWayException(String words) {
        super(words);
    }
}
