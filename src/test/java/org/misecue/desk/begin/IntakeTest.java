package org.misecue.desk.begin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.misecue.desk.door.Refusal;
import org.misecue.episode.FileKind;

class IntakeTest {

    private static final long PLENTY = Room.RESERVE * 4;

    @TempDir
    Path temp;

    private Incoming film(String name, long announced, InputStream body) {
        return new Incoming(name, FileKind.FILM, announced, body);
    }

    private static InputStream bytes(int length) {
        return new ByteArrayInputStream(new byte[length]);
    }

    private List<String> lying() {
        try (Stream<Path> files = Files.list(temp)) {
            return files.map(file -> String.valueOf(file.getFileName()))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void keep(Intake intake, Incoming file) {
        intake.keep(file, temp.resolve(file.name()), part -> {});
    }

    @Test
    void a_whole_file_lies_in_its_place_and_nothing_beside_it() {
        keep(new Intake(folder -> PLENTY), film("a.mp4", -1, bytes(200_000)));
        assertThat(lying()).containsExactly("a.mp4");
        assertThat(temp.resolve("a.mp4")).hasSize(200_000);
    }

    @Test
    void a_film_that_the_disk_has_no_room_for_is_not_even_begun() {
        Intake intake = new Intake(folder -> Room.RESERVE + 1000);
        assertThatThrownBy(() -> keep(intake, film("a.mp4", 1001, bytes(0))))
                .isInstanceOf(Refusal.class)
                .hasMessage(
                        "a.mp4: this disk takes films of at most 1000 bytes; make room, or move the episode to a larger disk.");
        assertThat(lying()).isEmpty();
    }

    @Test
    void one_that_did_not_say_how_long_it_is_stops_at_the_limit() {
        Intake intake = new Intake(folder -> Room.RESERVE + 1000);
        assertThatThrownBy(() -> keep(intake, film("a.mp4", -1, bytes(1001))))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.status()).isEqualTo(413));
        assertThat(lying()).isEmpty();
    }

    @Test
    void a_disk_that_others_fill_meanwhile_is_told_in_a_sentence() {
        long[] free = {PLENTY, Room.RESERVE - 1};
        int[] asked = {0};
        Intake intake = new Intake(folder -> free[Math.min(1, asked[0]++)]);
        assertThatThrownBy(() -> keep(intake, film("a.mp4", -1, bytes(80 << 20))))
                .hasMessage(
                        "a.mp4: the disk took no more of it, and nothing of it was kept; make room and add it again.");
        assertThat(lying()).isEmpty();
    }

    @Test
    void what_breaks_off_leaves_nothing() {
        InputStream breaks = new InputStream() {
            private int left = 100_000;

            @Override
            public int read() throws IOException {
                if (--left < 0) {
                    throw new IOException("the other side is gone");
                }
                return 7;
            }
        };
        assertThatThrownBy(() -> keep(new Intake(folder -> PLENTY), film("a.mp4", -1, breaks)))
                .hasMessage("a.mp4: this broke off on its way, and nothing of it was kept; add it again.");
        assertThat(lying()).isEmpty();
    }

    @Test
    void what_is_there_stays_as_it_is() throws IOException {
        Files.writeString(temp.resolve("Take.MP4"), "mine");
        assertThatThrownBy(() -> keep(new Intake(folder -> PLENTY), film("take.mp4", -1, bytes(5))))
                .hasMessage(
                        "take.mp4: there is a file of this name already, and it stays as it is; add this one under another name.");
        assertThat(temp.resolve("Take.MP4")).hasContent("mine");
    }

    @Test
    void one_that_comes_into_being_meanwhile_stays_too() {
        Path target = temp.resolve("a.mp4");
        assertThatThrownBy(() -> new Intake(folder -> PLENTY)
                        .keep(film("a.mp4", -1, bytes(5)), target, part -> write(target, "mine")))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.status()).isEqualTo(409));
        assertThat(target).hasContent("mine");
        assertThat(lying()).containsExactly("a.mp4");
    }

    @Test
    void a_link_of_this_name_is_not_written_through() throws IOException {
        Path elsewhere = Files.createDirectory(temp.resolve("elsewhere")).resolve("b.mp4");
        Files.createSymbolicLink(temp.resolve("a.mp4"), elsewhere);
        assertThatThrownBy(() -> keep(new Intake(folder -> PLENTY), film("a.mp4", -1, bytes(5))))
                .isInstanceOf(Refusal.class);
        assertThat(elsewhere).doesNotExist();
    }

    @Test
    void a_few_come_at_once_and_no_more() throws InterruptedException {
        Intake intake = new Intake(folder -> PLENTY);
        CountDownLatch inside = new CountDownLatch(4);
        CountDownLatch go = new CountDownLatch(1);
        List<Thread> senders = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            Incoming file = film(i + ".mp4", -1, bytes(5));
            senders.add(new Thread(() -> intake.keep(file, temp.resolve(file.name()), part -> {
                inside.countDown();
                await(go);
            })));
        }
        senders.forEach(Thread::start);
        inside.await();
        assertThatThrownBy(() -> keep(intake, film("5.mp4", -1, bytes(5))))
                .hasMessage("4 files are coming in already; add this one when one of them is done.");
        assertThatThrownBy(() -> keep(intake, film("1.mp4", -1, bytes(5))))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.status()).isEqualTo(409));
        go.countDown();
        for (Thread sender : senders) {
            sender.join();
        }
        keep(intake, film("5.mp4", -1, bytes(5)));
        assertThat(lying()).containsExactly("0.mp4", "1.mp4", "2.mp4", "3.mp4", "5.mp4");
    }

    @Test
    void what_a_desk_left_that_was_ended_is_swept_away_later() throws IOException {
        Path old = Files.writeString(temp.resolve(".part-1-old.mp4"), "x");
        Files.setLastModifiedTime(old, FileTime.from(Instant.now().minus(Duration.ofHours(2))));
        Path fresh = Files.writeString(temp.resolve(".part-1-fresh.mp4"), "x");
        keep(new Intake(folder -> PLENTY), film("a.mp4", -1, bytes(5)));
        assertThat(old).doesNotExist();
        assertThat(fresh).exists();
    }

    private static Path write(Path file, String text) {
        try {
            return Files.writeString(file, text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }
}
