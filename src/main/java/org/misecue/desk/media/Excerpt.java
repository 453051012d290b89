package org.misecue.desk.media;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.ReadableByteChannel;
import java.nio.file.Path;

/** A stretch of a file, read as it is sent. A file that became shorter meanwhile is a fault, so that nobody takes it for whole. */
final class Excerpt implements ReadableByteChannel {

    private final FileChannel file;
    private long at;
    private long left;

    Excerpt(Path file, long first, long length) throws IOException {
        this.file = FileChannel.open(file);
        this.at = first;
        this.left = length;
    }

    @Override
    public int read(ByteBuffer into) throws IOException {
        if (left == 0) {
            return -1;
        }
        int limit = into.limit();
        into.limit((int) Math.min(limit, into.position() + left));
        int count = file.read(into, at);
        into.limit(limit);
        if (count < 0) {
            throw new IOException("the file became shorter while it was sent");
        }
        at += count;
        left -= count;
        return count;
    }

    @Override
    public boolean isOpen() {
        return file.isOpen();
    }

    @Override
    public void close() throws IOException {
        file.close();
    }
}
