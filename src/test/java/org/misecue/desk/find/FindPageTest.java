package org.misecue.desk.find;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.StandardOpenOption;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.misecue.desk.OverSample;

class FindPageTest extends OverSample {

    private static final String FIND = "/e/sample-project/find";

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    vanila spoon              | 4:18 | step 5 | vanilla
                    little hollows            | 1:19 | step 1 | hollows
                    "same again"              | 3:37 | step 4 | same again
                    not in the recipe         | 1:34 | step 1 | recipe
                    step:9 sesame             | 7:33 | step 9 | sesame
                    """)
    void a_moment_is_found_by_half_remembered_words(String words, String time, String step, String marked) {
        Element best = moments(words).selectFirst("ol.moments a");
        assertThat(best).isNotNull();
        assertThat(best.selectFirst("b").text()).isEqualTo(time);
        assertThat(best.text()).contains(step).contains("footage/take-1.mp4");
        assertThat(best.select("mark").eachText()).contains(marked);
    }

    @Test
    void a_moment_has_an_address_that_can_be_sent_to_somebody() {
        String address = moments("little hollows").selectFirst("ol.moments a").attr("href");
        assertThat(address)
                .startsWith(FIND + "?q=little%20hollows&of=narration%2Fmain.vtt&t=")
                .endsWith("#play");
        Document page = Jsoup.parse(desk.get(address.replace("#play", "")).body());
        assertThat(page.selectFirst("#q").val()).isEqualTo("little hollows");
        assertThat(page.select("ol.moments a")).isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "   ", "!!!", "\"", "<>", "\u0000", "\uD83C\uDF70"})
    void what_nobody_can_say_finds_nothing_and_is_no_fault(String words) {
        assertThat(moments(words).select("ol.moments a, .sentence")).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"\"", "step:", "step:99999999999", "butter AND (", "a*b~2^", "½ tsp", "<script>alert(1)</script>"
            })
    void no_query_is_ill_formed(String words) {
        assertThat(desk.get(FIND + "/moments?q=" + encoded(words)).statusCode()).isEqualTo(200);
        assertThat(desk.get(FIND + "?q=" + encoded(words)).body()).doesNotContain("<script>alert");
    }

    @Test
    void a_query_without_end_is_cut() {
        assertThat(desk.get(FIND + "/moments?q=" + "plum+".repeat(1200)).statusCode())
                .isEqualTo(200);
    }

    @Test
    void what_was_said_nowhere_is_told_with_the_nearest() {
        assertThat(moments("hazlenutz").selectFirst(".tally").text()).contains("nearest to “hazelnut");
        assertThat(moments("zzyzx").selectFirst(".tally").text()).isEqualTo("Nobody says that");
    }

    @Test
    void words_that_were_just_added_to_the_narration_are_found() throws IOException {
        assertThat(moments("marzipan").select("ol.moments a")).isEmpty();
        Files.writeString(
                folder.resolve("narration/main.vtt"),
                "\n00:08:01.000 --> 00:08:03.000\nand next week marzipan\n",
                StandardOpenOption.APPEND);
        assertThat(moments("marzipan").select("ol.moments a b").eachText()).containsExactly("8:02");
    }

    @Test
    void what_is_in_the_files_is_text_on_the_page() throws IOException {
        Files.writeString(
                folder.resolve("narration/main.vtt"),
                "\n00:08:01.000 --> 00:08:03.000\nmarzipan &lt;img src=x onerror=alert(1)&gt; \"ok\"\n",
                StandardOpenOption.APPEND);
        assertThat(moments("marzipan").select("img")).isEmpty();
        assertThat(page(FIND).select("main img")).isEmpty();
    }

    @Test
    void a_narration_without_a_film_says_so_and_still_finds() throws IOException {
        Files.delete(folder.resolve("footage/take-1.mp4"));
        assertThat(moments("hollows").selectFirst("ol.moments a").text()).contains("narration/main.vtt, no picture");
        Document page = page(FIND);
        assertThat(page.select("video")).isEmpty();
        assertThat(page.selectFirst(".no-picture").text()).contains("No picture.");
        assertThat(page.select("#cues a")).hasSizeGreaterThan(30);
    }

    @Test
    void a_film_that_cannot_be_read_is_told_beside_the_others() throws IOException {
        Files.writeString(folder.resolve("footage/broken.mp4"), "no film");
        Document page = page(FIND + "?of=narration/main.vtt");
        assertThat(page.selectFirst(".player .caution").text()).contains("broken.mp4");
        assertThat(page.select("#cues a")).isNotEmpty();
    }

    @Test
    void films_in_which_nobody_speaks_can_be_chosen_too() throws IOException {
        Files.copy(folder.resolve("footage/take-1.mp4"), folder.resolve("footage/other camera.mp4"));
        Files.move(folder.resolve("footage/take-1.mp4"), folder.resolve("footage/main.mp4"));
        assertThat(page(FIND).select(".rolls a").eachText())
                .containsExactly("footage/main.mp4", "footage/other camera.mp4");
        Document other = page(FIND + "?of=footage/other%20camera.mp4");
        assertThat(other.selectFirst("video").attr("data-media"))
                .isEqualTo("/e/sample-project/media/other%20camera.mp4");
        assertThat(other.selectFirst(".said").text()).contains("Nobody wrote down");
    }

    @Test
    void before_anything_is_filmed_the_page_says_what_it_waits_for() throws IOException {
        Files.delete(folder.resolve("footage/take-1.mp4"));
        Files.delete(folder.resolve("narration/main.vtt"));
        assertThat(page(FIND).selectFirst("main").text()).contains("Nothing was filmed yet.");
        assertThat(moments("plums").selectFirst(".tally").text()).isEqualTo("Nobody says that");
    }

    @Test
    void every_step_and_its_shots_lead_to_their_time() {
        Document page = page(FIND);
        assertThat(page.select(".steps > li > a b").eachText()).contains("Step 1", "Step 9");
        assertThat(page.select(".steps ul a")).isNotEmpty().allMatch(shot -> shot.text()
                .matches("Shot .* (somewhere from )?\\d+:\\d\\d"));
        assertThat(page.select(".steps ul a").eachText()).contains("Shot 7, worktop overhead 0:37");
        assertThat(page.select(".strip svg")).hasSameSizeAs(page.select(".steps > li"));
    }

    private Document moments(String words) {
        return page(FIND + "/moments?q=" + encoded(words));
    }

    private Document page(String path) {
        return Jsoup.parse(desk.get(path).body());
    }

    private static String encoded(String words) {
        return URLEncoder.encode(words, StandardCharsets.UTF_8);
    }
}
