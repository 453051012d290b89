package org.misecue.footage;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ContactSheetsTest {

    private static final FrameRate PAL = new FrameRate(25, 1);

    @TempDir
    static Path folder;

    private static Path film;
    private static FilmInfo info;

    @BeforeAll
    static void shoot() {
        film = TestFilm.write(folder.resolve("film.mp4"), 250, PAL, false, number -> 40_000L * number, recorder -> {});
        info = Footage.probe(film);
    }

    private static SheetPlan plan(String name, int most, int... millis) {
        List<SheetPlan.Stretch> stretches = IntStream.range(0, millis.length / 2)
                .mapToObj(i ->
                        new SheetPlan.Stretch(Duration.ofMillis(millis[2 * i]), Duration.ofMillis(millis[2 * i + 1])))
                .toList();
        return new SheetPlan(name, "Step 1 · film.mp4", stretches, most, 4);
    }

    private static String moments(SheetPlan plan, FilmInfo film) {
        return Evenly.moments(plan, film).stream()
                .map(at -> String.valueOf(at.toMillis()))
                .collect(Collectors.joining(" "));
    }

    private static Map<String, byte[]> draw(SheetPlan... plans) {
        Map<String, byte[]> sheets = new LinkedHashMap<>();
        assertThat(ContactSheets.draw(
                        film, info, List.of(plans), at -> true, (plan, png) -> sheets.put(plan.name(), png)))
                .isTrue();
        return sheets;
    }

    @Test
    void moments_are_the_middles_of_equal_parts_each_in_the_middle_of_its_frame() {
        assertThat(moments(plan("even", 4, 0, 8000), info)).isEqualTo("1020 3020 5020 7020");
        assertThat(moments(plan("in two parts", 4, 0, 2000, 6000, 8000), info)).isEqualTo("500 1500 6500 7500");
        assertThat(moments(plan("a second each", 12, 2000, 4900), info)).isEqualTo("2740 4180");
        assertThat(moments(plan("short", 12, 2000, 2300), info)).isEqualTo("2140");
        assertThat(moments(plan("over the end", 2, 6000, 14_000), info)).isEqualTo("7020 9020");
        assertThat(moments(plan("behind the end", 2, 12_000, 14_000), info)).isEmpty();
    }

    @Test
    void a_rate_that_varies_has_no_middles() {
        Track.Picture uneven = new Track.Picture("h264", 160, 96, PAL, true);
        FilmInfo other = new FilmInfo(Duration.ofSeconds(10), List.of(uneven), Optional.empty());
        assertThat(moments(plan("even", 4, 0, 8000), other)).isEqualTo("1000 3000 5000 7000");
    }

    @Test
    void pictures_stand_in_rows_in_the_order_of_the_film() throws IOException {
        Map<String, byte[]> sheets = draw(
                plan("late.png", 6, 4000, 10_000), plan("early.png", 2, 0, 8000), plan("none.png", 2, 20_000, 30_000));

        assertThat(sheets).containsOnlyKeys("early.png", "late.png");
        assertThat(numbers(sheets.get("late.png"), 6)).containsExactly(112, 137, 162, 187, 212, 237);
        assertThat(numbers(sheets.get("early.png"), 2)).containsExactly(50, 150);
        BufferedImage late = ImageIO.read(new ByteArrayInputStream(sheets.get("late.png")));
        assertThat(late.getWidth()).isEqualTo(16 + 4 * 168 - 8 + 16);
        assertThat(late.getHeight()).isEqualTo(16 + 34 + 2 * (96 + 22 + 8) - 8 + 16);
    }

    private static List<Integer> numbers(byte[] sheet, int pictures) throws IOException {
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(sheet));
        return IntStream.range(0, pictures)
                .map(i -> TestFilm.numberIn(image.getSubimage(16 + i % 4 * 168, 50 + i / 4 * (96 + 22 + 8), 160, 96)))
                .boxed()
                .toList();
    }

    @Test
    void there_is_writing_over_and_under_the_pictures() throws IOException {
        BufferedImage image = ImageIO.read(
                new ByteArrayInputStream(draw(plan("one.png", 1, 0, 4000)).get("one.png")));
        assertThat(dark(image.getSubimage(16, 16, 300, 30))).isGreaterThan(200);
        assertThat(dark(image.getSubimage(16, 50 + 96, 160, 22))).isBetween(150L, 1000L);
        assertThat(dark(image.getSubimage(0, 0, image.getWidth(), 16))).isZero();
    }

    private static long dark(BufferedImage image) {
        return IntStream.range(0, image.getWidth() * image.getHeight())
                .filter(i -> (image.getRGB(i % image.getWidth(), i / image.getWidth()) & 0xff) < 128)
                .count();
    }

    @Test
    void the_same_film_gives_the_same_bytes() {
        SheetPlan plan = plan("one.png", 3, 0, 4000);
        assertThat(draw(plan).get("one.png")).isEqualTo(draw(plan).get("one.png"));
    }

    @Test
    void a_sheet_that_was_stopped_is_not_handed_out() {
        List<String> done = new ArrayList<>();
        boolean whole = ContactSheets.draw(
                film,
                info,
                List.of(plan("early.png", 2, 0, 3000), plan("late.png", 2, 2000, 9000)),
                at -> at.compareTo(Duration.ofSeconds(3)) < 0,
                (plan, png) -> done.add(plan.name()));
        assertThat(whole).isFalse();
        assertThat(done).containsExactly("early.png");
    }
}
