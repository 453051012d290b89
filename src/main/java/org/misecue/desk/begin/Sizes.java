package org.misecue.desk.begin;

import java.util.Locale;

/** Sizes of files in words. */
public final class Sizes {

    private Sizes() {}

    /** "640 bytes", "12 KB", "1.4 GB". */
    public static String words(long bytes) {
        if (bytes < 1024) {
            return bytes + (bytes == 1 ? " byte" : " bytes");
        }
        double size = bytes;
        int unit = -1;
        while (size >= 1000 && unit < 3) {
            size /= 1024;
            unit++;
        }
        return String.format(
                Locale.ROOT, size < 10 && unit > 0 ? "%.1f %s" : "%.0f %s", size, "KB MB GB TB".split(" ")[unit]);
    }
}
