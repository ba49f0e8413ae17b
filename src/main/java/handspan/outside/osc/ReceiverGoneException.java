package handspan.outside.osc;

import java.io.IOException;

/** The receiver has ended the connection. */
final class ReceiverGoneException extends IOException {
    private static final long serialVersionUID = 1;

    ReceiverGoneException() {
        super("the receiver has ended the connection");
    }
}
