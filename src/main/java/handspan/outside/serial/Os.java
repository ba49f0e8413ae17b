package handspan.outside.serial;

import java.util.Locale;

/** Kinds of systems that treat serial ports in their own ways. */
enum Os {
    LINUX,
    MAC,
    WINDOWS;

    /** The one that this program runs on; what is none of the others is treated as Linux is. */
    static Os here() {
        String name = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        return name.contains("windows") ? WINDOWS : name.contains("mac") ? MAC : LINUX;
    }
}
