package org.misecue.desk.media;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** RFC 9110, section 14; its examples are of a file of 10000 bytes. */
class WantedTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # the examples of 14.1.2
            bytes=0-499            | 10000 | 0-499
            bytes=500-999          | 10000 | 500-999
            bytes=-500             | 10000 | 9500-9999
            bytes=9500-            | 10000 | 9500-9999
            bytes=0-0,-1           | 10000 | whole
            bytes= 0-999, 4500-5499, -1000 | 10000 | whole
            bytes=500-600,601-999  | 10000 | 500-999
            bytes=500-700,601-999  | 10000 | 500-999
            # 14.1.1: positions beyond the end
            bytes=0-               | 10000 | 0-9999
            bytes=9999-            | 10000 | 9999-9999
            bytes=9000-20000       | 10000 | 9000-9999
            bytes=-20000           | 10000 | 0-9999
            bytes=10000-           | 10000 | nothing
            bytes=10000-10001      | 10000 | nothing
            bytes=-0               | 10000 | nothing
            bytes=20000-,30000-    | 10000 | nothing
            bytes=20000-,0-1       | 10000 | 0-1
            bytes=0-               | 0     | nothing
            bytes=-5               | 0     | nothing
            # numbers that no file reaches
            bytes=0-99999999999999999999999 | 10000 | 0-9999
            bytes=99999999999999999999999-  | 10000 | nothing
            bytes=-99999999999999999999999  | 10000 | 0-9999
            # 14.2: what is not written as it should be is passed over
            bytes=5-1              | 10000 | whole
            bytes=0-1,5-1          | 10000 | whole
            bytes=--1              | 10000 | whole
            bytes=-1-2             | 10000 | whole
            bytes=a-b              | 10000 | whole
            bytes=1                | 10000 | whole
            bytes=                 | 10000 | whole
            bytes=,                | 10000 | whole
            bytes=-                | 10000 | whole
            bytes=0x10-20          | 10000 | whole
            bytes=1.5-2            | 10000 | whole
            bytes 0-1              | 10000 | whole
            bytes:0-1              | 10000 | whole
            seconds=0-1            | 10000 | whole
            # list elements may be empty (5.6.1.2), units are in any case
            'bytes=,0-1, ,'        | 10000 | 0-1
            BYTES=0-1              | 10000 | 0-1
            # out of order, twice, one within the other
            bytes=500-999,0-499    | 10000 | 0-999
            bytes=0-9,0-9,0-9      | 10000 | 0-9
            bytes=0-9999,5-6       | 10000 | 0-9999
            """)
    void a_range_is_read_as_the_rfc_has_it(String range, long size, String expected) {
        assertThat(words(Wanted.read(range, size))).isEqualTo(expected);
    }

    @Test
    void thousands_of_ranges_are_answered_with_the_whole() {
        String many =
                IntStream.range(0, 5000).mapToObj(i -> i * 2 + "-" + i * 2).collect(Collectors.joining(","));

        assertThat(Wanted.read("bytes=" + many, 10000)).isEqualTo(new Wanted.Whole());
        assertThat(Wanted.read("bytes=" + ",".repeat(100_000), 10000)).isEqualTo(new Wanted.Whole());
    }

    @Property
    void whatever_is_asked_lies_within_the_file(
            @ForAll @CharRange(from = '-', to = '9') @StringLength(max = 20) String set,
            @ForAll @LongRange(min = 0, max = 100) long size) {
        Wanted wanted = Wanted.read("bytes=" + set.replace('/', ','), size);

        if (wanted instanceof Wanted.Part part) {
            assertThat(part.first()).isBetween(0L, size - 1);
            assertThat(part.length()).isBetween(1L, size - part.first());
        }
    }

    private static String words(Wanted wanted) {
        if (wanted instanceof Wanted.Part part) {
            return part.first() + "-" + (part.first() + part.length() - 1);
        }
        return wanted instanceof Wanted.Whole ? "whole" : "nothing";
    }
}
