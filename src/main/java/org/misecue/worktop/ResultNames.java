package org.misecue.worktop;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * What results that are made of files are called: like the file without its ending, and with it where another file would
 * give the same name. Names that differ in capital letters only are the same, because they are on many disks.
 *
 * @param files all that such results are made of, with their folders
 */
public record ResultNames(List<String> files) {

    /** The name for what is made of one of the files, without folder and ending. */
    public String of(String file) {
        String stem = Worktop.stem(file);
        boolean taken = files.stream()
                .filter(other -> !other.equals(file))
                .flatMap(other -> Stream.of(Worktop.stem(other), last(other)))
                .anyMatch(name -> same(name).equals(same(stem)));
        return taken ? last(file) : stem;
    }

    private static String last(String file) {
        return file.substring(file.lastIndexOf('/') + 1);
    }

    private static String same(String name) {
        return Normalizer.normalize(name, Normalizer.Form.NFC).toLowerCase(Locale.ROOT);
    }
}
