package org.misecue.desk.media;

import static java.nio.charset.StandardCharsets.UTF_8;

import io.javalin.http.Context;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Which state of a file this is, and what conditions on that mean (RFC 9110, 8.8 and 13).
 *
 * @param tag strong: changes with every change of the file that its size, its time or its place on the disk shows
 * @param changed in whole seconds, as HTTP tells times
 */
record Version(long size, String tag, Instant changed) {

    private static final DateTimeFormatter HTTP_DATE = DateTimeFormatter.ofPattern(
                    "EEE, dd MMM yyyy HH:mm:ss 'GMT'", Locale.ENGLISH)
            .withZone(ZoneOffset.UTC);

    static Version of(Path file) throws IOException {
        BasicFileAttributes is = Files.readAttributes(file, BasicFileAttributes.class);
        Instant time = is.lastModifiedTime().toInstant();
        String key = String.valueOf(is.fileKey()) + '/' + time + '/' + is.size();
        String tag = "\"" + UUID.nameUUIDFromBytes(key.getBytes(UTF_8)) + "\"";
        return new Version(is.size(), tag, time.truncatedTo(ChronoUnit.SECONDS));
    }

    String changedText() {
        return HTTP_DATE.format(changed);
    }

    /** The status by which a condition of the request ends it: 304, 412, or empty where it goes on. */
    Optional<Integer> ending(Context request) {
        String match = request.header("If-Match");
        if (match != null ? !names(match, false) : isAfter(request.header("If-Unmodified-Since"))) {
            return Optional.of(412);
        }
        String none = request.header("If-None-Match");
        boolean same = none != null ? names(none, true) : isNotAfter(request.header("If-Modified-Since"));
        return same ? Optional.of(304) : Optional.empty();
    }

    /** Whether a range may be given to somebody who has part of the file, or needs the whole because it changed. */
    boolean stillHolds(String ifRange) {
        if (ifRange.startsWith("\"") || ifRange.startsWith("W/")) {
            return ifRange.equals(tag);
        }
        // A file that was changed this very second may be changed again without its time showing it.
        return ifRange.equals(changedText()) && changed.isBefore(Instant.now().minusSeconds(2));
    }

    private boolean names(String tags, boolean weak) {
        return Arrays.stream(tags.split(","))
                .map(String::strip)
                .map(one -> weak && one.startsWith("W/") ? one.substring(2) : one)
                .anyMatch(one -> one.equals("*") || one.equals(tag));
    }

    private boolean isAfter(@Nullable String date) {
        return read(date).filter(changed::isAfter).isPresent();
    }

    private boolean isNotAfter(@Nullable String date) {
        return read(date).filter(when -> !changed.isAfter(when)).isPresent();
    }

    /** A date that cannot be read is none. */
    private static Optional<Instant> read(@Nullable String date) {
        try {
            return Optional.ofNullable(date).map(text -> ZonedDateTime.parse(text, DateTimeFormatter.RFC_1123_DATE_TIME)
                    .toInstant());
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }
}
