package handspan.outside.osc.packet;

/** The bytes with a meaning of their own on a serial line (RFC 1055, J. Romkey, 1988, "Protocol"). */
final class Slip {
    /** Ends a packet: octal 300. */
    static final byte END = (byte) 0300;

    /** What comes after it stands for another: octal 333. */
    static final byte ESC = (byte) 0333;

    /** After ESC: an END within the packet, octal 334. */
    static final byte ESC_END = (byte) 0334;

    /** After ESC: an ESC within the packet, octal 335. */
    static final byte ESC_ESC = (byte) 0335;

    private Slip() {}
}
