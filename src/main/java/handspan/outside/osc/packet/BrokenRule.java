package handspan.outside.osc.packet;

/** A rule that a packet breaks; never leaves the decoder. Without a trace, since whole floods of packets may. */
final class BrokenRule extends Exception {
    private static final long serialVersionUID = 1;

    private final int atByte;

    BrokenRule(int atByte, String rule) {
        super(rule, null, false, false);
        this.atByte = atByte;
    }

    /** Where in the packet, from 0. */
    int atByte() {
        return atByte;
    }

    /** In words. */
    String rule() {
        return String.valueOf(getMessage());
    }
}
