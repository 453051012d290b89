package org.misecue.search;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;

/** Writes to an archive's index until it is killed, and prints a line whenever an episode is put. */
final class KilledWriter {

    private KilledWriter() {}

    /** @param args the archive, and whether each episode is kept at once */
    public static void main(String[] args) {
        boolean kept = Boolean.parseBoolean(args[1]);
        List<Passage> passages = IntStream.range(0, 300)
                .mapToObj(i -> Talk.said(i * 20, "margarine " + i))
                .toList();
        ArchiveWriter writer = ArchiveIndex.open(Path.of(args[0])).writer();
        for (int i = 0; true; i++) {
            writer.put("episode-" + i % 3, new Shelved("new", List.of()), passages, List.of());
            if (kept) {
                writer.commit();
            }
            System.out.println(i);
        }
    }
}
