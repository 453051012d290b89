package org.misecue.search;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.lucene.store.ByteArrayDataInput;
import org.apache.lucene.store.ByteArrayDataOutput;
import org.apache.lucene.store.DataInput;
import org.apache.lucene.store.DataOutput;
import org.apache.lucene.util.ArrayUtil;
import org.apache.lucene.util.BytesRef;
import org.apache.lucene.util.UnicodeUtil;

/** What is shown of a {@link Window}, in few bytes. */
final class WindowBytes {

    /** Bytes that a number takes at the most. */
    private static final int NUMBER = 10;

    private byte[] room = new byte[4096];
    private final ByteArrayDataOutput out = new ByteArrayDataOutput();

    /**
     * They are overwritten by the next.
     *
     * @param text the window's, in UTF-8
     */
    BytesRef of(Window window, byte[] text) {
        try {
            room = ArrayUtil.growNoCopy(room, most(window, text));
            out.reset(room);
            write(window, text, out);
            return new BytesRef(room, 0, out.getPosition());
        } catch (IOException e) {
            throw new UncheckedIOException(e); // not into memory
        }
    }

    /** How many bytes it takes at the most. */
    private static int most(Window window, byte[] text) {
        int letters = window.passage().kind().name().length()
                + window.passage().source().length()
                + window.passage().speaker().map(String::length).orElse(0);
        int numbers = NUMBER + window.times().size();
        for (Window.Amount amount : window.amounts()) {
            letters += amount.key().length();
            numbers += 3;
        }
        return NUMBER * numbers + text.length + UnicodeUtil.maxUTF8Length(letters);
    }

    static Window window(BytesRef bytes) {
        try {
            return read(new ByteArrayDataInput(bytes.bytes, bytes.offset, bytes.length));
        } catch (IOException e) {
            throw new UncheckedIOException(e); // not from memory
        }
    }

    private static void write(Window window, byte[] text, DataOutput out) throws IOException {
        Passage passage = window.passage();
        write(passage.kind().name(), out);
        write(passage.source(), out);
        write(passage.speaker().orElse(""), out);
        out.writeVInt(passage.step());
        write(passage.start(), out);
        write(passage.end(), out);
        write(window.textEnd(), out);
        write(text, out);
        out.writeVInt(window.ownLength());
        out.writeVInt(window.times().size());
        long before = passage.start().toMillis();
        long pace = 0;
        for (int i = 0; i < window.times().size(); i++) {
            long time = window.times().millis(i);
            out.writeZLong(time - before - pace); // most are as long as the one before: one byte, and often the same
            pace = time - before;
            before = time;
        }
        out.writeVInt(window.amounts().size());
        for (Window.Amount amount : window.amounts()) {
            write(amount.key(), out);
            out.writeVInt(amount.from());
            out.writeVInt(amount.to());
        }
    }

    private static Window read(DataInput in) throws IOException {
        Passage.Kind kind = Passage.Kind.valueOf(in.readString());
        String source = in.readString();
        String speaker = in.readString();
        int step = in.readVInt();
        Duration start = time(in);
        Duration end = time(in);
        Duration textEnd = time(in);
        String text = in.readString();
        int ownLength = in.readVInt();
        int words = in.readVInt();
        Times times = new Times(words);
        long time = start.toMillis();
        long pace = 0;
        for (int left = words; left > 0; left--) {
            pace += in.readZLong();
            time += pace;
            times.add(time);
        }
        List<Window.Amount> amounts = new ArrayList<>();
        for (int left = in.readVInt(); left > 0; left--) {
            amounts.add(new Window.Amount(in.readString(), in.readVInt(), in.readVInt(), Set.of()));
        }
        Passage passage = new Passage(
                kind,
                source,
                start,
                end,
                text.substring(0, ownLength),
                step,
                Optional.of(speaker).filter(name -> !name.isEmpty()),
                List.of(),
                List.of(),
                Set.of());
        return new Window(passage, text, ownLength, textEnd, times, amounts);
    }

    /** As {@link DataInput#readString} reads it. */
    private static void write(String text, DataOutput out) throws IOException {
        write(text.getBytes(UTF_8), out);
    }

    private static void write(byte[] utf8, DataOutput out) throws IOException {
        out.writeVInt(utf8.length);
        out.writeBytes(utf8, utf8.length);
    }

    private static void write(Duration time, DataOutput out) throws IOException {
        out.writeZLong(time.toMillis());
    }

    private static Duration time(DataInput in) throws IOException {
        return Duration.ofMillis(in.readZLong());
    }
}
