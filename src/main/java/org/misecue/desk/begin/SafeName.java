package org.misecue.desk.begin;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;

/** Names of files as every system takes them, made from names as anybody may send them. */
final class SafeName {

    private static final int LONGEST = 120;

    /** File systems count bytes, mostly to 255; some go to the marks of parts. */
    private static final int MOST_BYTES = 200;

    private static final int LONGEST_ENDING = 12;

    /** Devices of Windows, whatever their ending. Source: Microsoft, "Naming Files, Paths, and Namespaces", from memory. */
    private static final Pattern RESERVED =
            Pattern.compile("(?i)(con|prn|aux|nul|conin\\$|conout\\$|(com|lpt)[0-9¹²³])\\s*(\\..*)?");

    private SafeName() {}

    /** Empty where nothing of the name can be kept. */
    static String of(String given) {
        String name = given.substring(Math.max(given.lastIndexOf('/'), given.lastIndexOf('\\')) + 1);
        name = Normalizer.normalize(name.replaceAll("[\\p{C}\\uFFFD]", ""), Normalizer.Form.NFC)
                .replaceAll("[<>:\"|?*]", "-")
                .replaceAll("[\\s\\p{Z}]+", " ")
                .replaceAll("^[. -]+", "")
                .replaceAll("[. ]+$", "");
        if (RESERVED.matcher(name).matches()) {
            name = "file-" + name;
        }
        return shortened(name);
    }

    /** Equal for names that some file system takes for one. */
    static String folded(String name) {
        return Normalizer.normalize(name, Normalizer.Form.NFKC)
                .toUpperCase(Locale.ROOT)
                .toLowerCase(Locale.ROOT);
    }

    private static String shortened(String name) {
        int dot = name.lastIndexOf('.');
        boolean ended = dot > 0 && name.length() - dot <= LONGEST_ENDING;
        String stem = ended ? name.substring(0, dot) : name;
        String ending = ended ? name.substring(dot) : "";
        boolean cut = false;
        while (isLong(stem + ending)) {
            stem = stem.substring(0, stem.offsetByCodePoints(stem.length(), -1));
            cut = true;
        }
        return (cut ? stem.replaceAll("[. ]+$", "") : stem) + ending;
    }

    private static boolean isLong(String name) {
        return name.length() > LONGEST || name.getBytes(UTF_8).length > MOST_BYTES;
    }
}
