package org.misecue.footage;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Set;

/**
 * The outermost boxes of an MP4 or QuickTime file (ISO/IEC 14496-12, 4.2): each begins with its length and its kind.
 * FFmpeg plays on where the last one is cut short; here that is said.
 */
final class Boxes {

    private static final Set<String> FIRST = Set.of("ftyp", "moov", "mdat", "wide", "free", "skip");
    private static final int HEAD = 16;
    private static final int SHORTEST = 8;
    private static final int LONG_LENGTH = 1;

    private Boxes() {}

    /** Whether the file is made of boxes and ends before its last box does. */
    static boolean breakOff(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file)) {
            long at = 0;
            while (at < channel.size()) {
                ByteBuffer head = ByteBuffer.allocate(HEAD);
                channel.read(head, at);
                long length = Integer.toUnsignedLong(head.getInt(0));
                String kind = new String(head.array(), 4, 4, StandardCharsets.ISO_8859_1);
                if (at == 0 && !FIRST.contains(kind)) {
                    return false;
                }
                if (length == LONG_LENGTH) {
                    length = head.getLong(8);
                }
                if (length < SHORTEST) {
                    // 0 means "to the end of the file"; anything else is for FFmpeg to judge.
                    return false;
                }
                at += length;
            }
            return at > channel.size();
        }
    }
}
