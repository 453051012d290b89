package org.misecue.desk.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.misecue.desk.check.CheckClient.hidden;
import static org.misecue.desk.check.CheckClient.row;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.misecue.desk.OverSample;

/** Words that were misheard, corrected on the page. */
class HearingTest extends OverSample {

    private static final String BUTTER = "175 g unsalted butter";

    private CheckClient client;

    @BeforeEach
    void a_client_asks() {
        client = new CheckClient(desk, folder);
    }

    private HttpResponse<String> correct(Element words, String was, String heard) {
        Map<String, String> form = hidden(words);
        form.put("heard", words.selectFirst("textarea").text().replace(was, heard));
        form.put("by", "Nell");
        return client.post("check/heard", form);
    }

    private HttpResponse<String> butterIs(String heard) {
        return correct(
                row(client.page("check"), BUTTER).selectFirst("form.words"), "two hundred grams", heard + " grams");
    }

    private String corrections() throws IOException {
        return Files.readString(folder.resolve(".misecue/corrections.yaml"));
    }

    @Test
    void a_corrected_word_changes_the_verdict_and_is_shown_in_its_row() throws IOException {
        Path narration = folder.resolve("narration/main.vtt");
        String before = Files.readString(narration);
        assertThat(butterIs("one seventy five").statusCode()).isEqualTo(200);
        Document after = client.page("check");
        assertThat(after.select("#differs")).isEmpty();
        Element butter = row(after, BUTTER);
        assertThat(butter.parent().id()).isEqualTo("agrees");
        assertThat(butter.select(".moment mark").text()).isEqualTo("one seventy five grams");
        assertThat(butter.select(".by-ear form p").text())
                .startsWith(
                        "At 3:20 in narration/main.vtt Nell heard “one seventy five” where “two hundred” was written (");
        assertThat(after.select("#corrected .heard p").text()).contains("“one seventy five”");
        assertThat(Files.readString(narration)).isEqualTo(before);
        assertThat(corrections())
                .contains("was: \"two hundred\"\n  heard: \"one seventy five\"\n  by: \"Nell\"")
                .contains("narration: \"narration/main.vtt\"");
        assertThat(client.page("text").text()).contains("Corrected by ear: At 3:20");
    }

    @Test
    void a_correction_is_taken_back() {
        butterIs("one seventy five");
        Document after = client.page("check");
        HttpResponse<String> back =
                client.post("check/as-written", hidden(after.selectFirst("#corrected .heard form")));
        assertThat(back.statusCode()).isEqualTo(200);
        assertThat(client.page("check").select("#differs article h3").text()).startsWith(BUTTER);
        assertThat(client.post("check/as-written", hidden(after.selectFirst("#corrected .heard form")))
                        .statusCode())
                .isEqualTo(409);
    }

    @Test
    void a_correction_is_corrected_in_one() throws IOException {
        butterIs("one fifty");
        Element words = row(client.page("check"), BUTTER).selectFirst("form.words");
        correct(words, "one fifty grams", "one seventy five grams");
        assertThat(corrections())
                .containsOnlyOnce("was:")
                .contains("was: \"two hundred\"\n  heard: \"one seventy five\"");
        Element again = row(client.page("check"), BUTTER).selectFirst("form.words");
        correct(again, "one seventy five grams", "two hundred grams");
        assertThat(corrections()).doesNotContain("was:");
    }

    @Test
    void the_words_around_any_moment_can_be_corrected() throws IOException {
        client.page("check");
        Element words = Jsoup.parse(client.piece("check/words?source=narration/main.vtt&at=6:58")
                        .body())
                .selectFirst("form.words");
        assertThat(words.selectFirst("textarea").text()).contains("four tablespoons of tahini");
        assertThat(correct(words, "four tablespoons of tahini", "sixty grams of tahini")
                        .statusCode())
                .isEqualTo(200);
        assertThat(corrections()).contains("was: \"four tablespoons\"");
        assertThat(row(client.page("check"), "60 g tahini").text()).contains("agrees");
    }

    @Test
    void a_moment_without_words_is_refused_with_a_sentence() {
        client.page("check");
        assertThat(client.piece("check/words?source=narration/main.vtt&at=59:00")
                        .body())
                .contains("Nothing is said at 59:00");
        assertThat(client.piece("check/words?source=narration/main.vtt&at=soon").body())
                .contains("Expected a time such as 3:20, not “soon”");
        assertThat(client.piece("check/words?source=../secret&at=1:00").statusCode())
                .isEqualTo(422);
    }

    @Test
    void nothing_is_taken_down_where_nothing_was_changed() {
        assertThat(butterIs("two hundred").body()).contains("That is what is written already");
        assertThat(folder.resolve(".misecue/corrections.yaml")).doesNotExist();
    }

    @Test
    void words_that_somebody_else_corrected_meanwhile_are_not_corrected_blindly() throws IOException {
        Element seen = row(client.page("check"), BUTTER).selectFirst("form.words");
        butterIs("one seventy five");
        client.page("check");
        HttpResponse<String> late = correct(seen, "two hundred grams", "three hundred grams");
        assertThat(late.statusCode()).isEqualTo(422);
        assertThat(late.body()).contains("have changed since you saw them");
        assertThat(corrections()).doesNotContain("three hundred");
    }

    @Test
    void a_correction_whose_words_are_gone_is_told_and_counts_no_more() throws IOException {
        butterIs("one seventy five");
        Path narration = folder.resolve("narration/main.vtt");
        Files.writeString(narration, Files.readString(narration).replace("that's two hundred", "that's two fifty"));
        Document page = client.page("check");
        assertThat(page.select("#corrected .heard p").text()).endsWith("listen again.");
        assertThat(page.select("#differs article h3").text()).startsWith(BUTTER);
    }

    @Test
    void a_decision_that_rested_on_misheard_words_is_to_be_taken_again() {
        Element butter = row(client.page("check"), BUTTER);
        client.decide(CheckClient.form(butter, "keep"));
        butterIs("one ninety");
        assertThat(row(client.page("check"), BUTTER).select(".standing").text())
                .startsWith("To decide: decided before");
    }
}
