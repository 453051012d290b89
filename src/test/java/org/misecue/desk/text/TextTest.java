package org.misecue.desk.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.misecue.desk.check.CheckClient.form;
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
import org.misecue.desk.check.CheckClient;
import org.misecue.episode.Episode;
import org.misecue.episode.Publication;
import org.misecue.episode.Publications;

/** What goes out, and that it went. */
class TextTest extends OverSample {

    private CheckClient client;

    @BeforeEach
    void a_client_asks() {
        client = new CheckClient(desk, folder);
    }

    private void decideAll() {
        Document check = client.page("check");
        client.decide(form(row(check, "175 g unsalted butter"), "pickup"));
        client.decide(form(row(check, "¼ tsp ground cardamom"), "keep"));
    }

    private Map<String, String> publishing(Document page) {
        Map<String, String> form = hidden(page.selectFirst("#publish form"));
        form.putIfAbsent("on", "2026-05-20");
        form.putIfAbsent("by", "Nell");
        return form;
    }

    private Document publish(Map<String, String> form, int status) {
        HttpResponse<String> answer = client.post("text/publish", form);
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(status);
        return Jsoup.parse(answer.body());
    }

    private java.util.List<Publication> published() {
        return new Publications(Episode.open(folder)).read();
    }

    @Test
    void a_draft_says_so_and_leads_to_what_keeps_it_back() {
        Document page = client.page("text");
        assertThat(page.selectFirst("#description").wholeText()).startsWith("DRAFT – NOT FOR PUBLISHING.");
        assertThat(page.select("#holds").text()).isEqualTo("A draft: 2 matters keep this from being published");
        Document check = client.page("check");
        page.select(".holds a").forEach(link -> {
            String id = link.attr("href").replaceAll(".*#", "");
            assertThat(check.selectFirst("#" + id + " h3").text()).isEqualTo(link.text());
        });
    }

    @Test
    void the_text_is_shown_as_it_goes_out_with_its_length() {
        decideAll();
        Document page = client.page("text");
        Element text = page.selectFirst("#description");
        assertThat(text.wholeText())
                .startsWith("Roasted Plum and Hazelnut Cake")
                .contains("BUTTER");
        assertThat(page.select(".count").text())
                .isEqualTo("%,d of 5,000 characters".formatted(text.wholeText().length()));
        assertThat(page.text())
                .contains("Nothing keeps this from being published.")
                .contains("1169/2011");
        assertThat(page.text()).doesNotContainPattern("(?i)(dairy|gluten|nut|egg)[- ]free|free (of|from)");
    }

    @Test
    void files_are_handed_over_without_being_written_and_follow_the_decisions() {
        client.page("text");
        HttpResponse<String> draft = client.get("text/files/recipe.jsonld");
        assertThat(draft.headers().firstValue("Content-Disposition"))
                .contains("attachment; filename=\"recipe.jsonld\"");
        assertThat(draft.body()).contains("\"creativeWorkStatus\" : \"Draft\"");
        decideAll();
        assertThat(client.get("text/files/recipe.jsonld").body()).doesNotContain("Draft");
        assertThat(client.get("text/files/recipe.html").body())
                .contains("<!DOCTYPE html>")
                .doesNotContain("DRAFT");
        assertThat(client.get("text/files/recipe.pdf").body()).startsWith("%PDF");
        assertThat(client.get("text/files/..%2Fepisode.yaml").statusCode()).isBetween(400, 404);
        assertThat(folder.resolve("out")).doesNotExist();
    }

    @Test
    void files_are_written_when_somebody_asks() {
        client.page("text");
        Document answer = Jsoup.parse(client.post("text/files", Map.of()).body());
        assertThat(answer.select("[data-say]").text())
                .isEqualTo("Made out/description.txt, out/recipe.html, out/recipe.pdf, out/recipe.jsonld.");
        assertThat(folder.resolve("out/recipe.pdf")).isNotEmptyFile();
    }

    @Test
    void it_counts_as_published_only_after_a_second_yes() {
        decideAll();
        Document sure = publish(publishing(client.page("text")), 200);
        assertThat(sure.select("#publish").text())
                .contains("Does it go out like this?")
                .contains("by Nell");
        assertThat(published()).isEmpty();
        Document done = publish(publishing(sure), 200);
        assertThat(done.select("[data-say]").text()).isEqualTo("It counts as published on 2026-05-20.");
        assertThat(done.text()).contains("2026-05-20, Nell").contains("Nothing that was published has changed since.");
        assertThat(published()).extracting(Publication::who).containsExactly("Nell");
        publish(publishing(sure), 409);
        assertThat(published()).hasSize(1);
    }

    @Test
    void what_is_kept_back_goes_out_only_with_a_reason() {
        Document page = client.page("text");
        Map<String, String> form = publishing(page);
        assertThat(publish(form, 409).text()).contains("write why it goes out all the same");
        form.put("anyway", "the cover is on its way");
        Document sure = publish(form, 200);
        assertThat(sure.select("#publish").text())
                .contains("2 matters still keep it back. It goes out all the same, because: the cover is on its way");
        publish(publishing(sure), 200);
        assertThat(published()).extracting(Publication::anyway).containsExactly("the cover is on its way");
    }

    @Test
    void what_changed_since_it_was_read_does_not_go_out() throws IOException {
        decideAll();
        Document sure = publish(publishing(client.page("text")), 200);
        Path recipe = folder.resolve("recipe.md");
        Files.writeString(recipe, Files.readString(recipe).replace("3 large eggs", "4 large eggs"));
        client.page("text");
        Map<String, String> late = publishing(sure);
        late.put("anyway", "it does not matter");
        assertThat(publish(late, 409).text()).contains("What goes out has changed since you looked");
        assertThat(published()).isEmpty();
    }

    @Test
    void the_correction_for_viewers_is_written_when_an_amount_turns_out_wrong() throws IOException {
        decideAll();
        publish(publishing(publish(publishing(client.page("text")), 200)), 200);
        Path recipe = folder.resolve("recipe.md");
        Files.writeString(recipe, Files.readString(recipe).replace("1 tsp ground ginger", "2 tsp ground ginger"));
        assertThat(client.page("text").select("#erratum").text())
                .contains("2 tsp ground ginger")
                .contains("not 1 tsp");
    }

    @Test
    void a_page_that_shows_everything_gets_nothing_more() {
        Document page = client.page("text");
        String follow = page.selectFirst("#sheet").attr("hx-get").substring("/e/sample-project/".length());
        assertThat(client.piece(follow).statusCode()).isEqualTo(204);
        decideAll();
        assertThat(client.piece(follow).body()).doesNotContain("DRAFT");
    }
}
