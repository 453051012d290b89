package org.misecue.publish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.misecue.notice.BadInput;

class PublishTemplatesTest {

    @TempDir
    private Path folder;

    @Test
    void the_guide_explains_every_name_and_no_other() throws IOException {
        List<String> explained = Pattern.compile("(?m)^\\| `([a-z.-]+)` \\|")
                .matcher(Files.readString(Path.of("src/docs/publish-templates.md")))
                .results()
                .map(match -> match.group(1))
                .toList();
        List<String> names = new ArrayList<>();
        TemplateNames.ALL.forEach((name, section) -> names.add(name));

        assertThat(explained).containsExactlyInAnyOrderElementsOf(names);
    }

    @Test
    void every_name_is_filled() {
        Map<String, Object> filled = new PublishedNames(TestEditions.pearCake(), DescriptionSettings.usual()).all();

        assertThat(filled.keySet())
                .containsExactlyInAnyOrderElementsOf(TemplateNames.ALL.inner().keySet());
    }

    @Test
    void a_template_of_ones_own_takes_the_place_of_the_programs_and_the_episodes_comes_first() throws IOException {
        Path home = own("home", "description.txt", "From home: {{title}}");
        Path episode = own(
                "episode",
                "description.txt",
                "{{#ingredients}}{{#parts}}{{#lines}}[{{amount}}]{{/lines}}{{/parts}}{{/ingredients}}");
        Map<String, Path> both = new LinkedHashMap<>();
        both.put("home", home);
        both.put("episode", episode);

        assertThat(described(Map.of("home", home)).text()).isEqualTo("From home: Pear and rye cake\n");
        assertThat(described(both).text()).startsWith("[175 g (about ¾ cup)][150 g (5 oz)]");
        assertThat(described(both).notes())
                .extracting(Object::toString)
                .contains(
                        "episode/description.txt: the template does not name “allergens”, so the description does not sum them up");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
                    {{titel}}                     | “titel” is not a name for templates here; did you mean “title”?
                    {{title.class.name}}          | “title.class.name” is not a name for templates here; known here: title,
                    {{#ingredients}}              | the section “ingredients” does not end; write “{{/ingredients}}” where it does.
                    {{/ingredients}}              | “{{/ingredients}}” ends a section that has not begun; take it out.
                    {{#method}}{{/chapters}}      | “{{/chapters}}” ends the section “method”; write “{{/method}}”.
                    {{> /etc/passwd}}             | “{{>” is not for these templates, which only name texts, sections and remarks; take it out.
                    {{=<% %>=}}                   | “{{=” is not for these templates, which only name texts, sections and remarks; take it out.
                    {{&title}}                    | “{{&” is not for these templates, which only name texts, sections and remarks; take it out.
                    {{{title}}}                   | only {{{json-ld}}} has three braces; write “{{title}}”.
                    {{title                       | “{{” is not closed; write “}}” behind the name.
                    {{heading}}                   | “heading” is not a name for templates here
                    """)
    void what_is_wrong_with_a_template_is_told_with_its_line(String wrong, String sentence) throws IOException {
        Path own = own("own", "description.txt", "{{title}}\n{{! second }}\n" + wrong);

        assertThatThrownBy(() -> PublishTemplates.withOwn(Map.of("publish-templates", own)))
                .isInstanceOf(BadInput.class)
                .hasMessageStartingWith("publish-templates/description.txt:3: " + sentence);
    }

    @Test
    void a_template_can_not_call_what_a_text_or_a_list_could_do() throws IOException {
        for (String call : List.of("title.length", "title.getClass", "ingredients.parts.size", "label.entrySet")) {
            Path own = own("own-" + call, "description.txt", "{{" + call + "}}");

            assertThatThrownBy(() -> PublishTemplates.withOwn(Map.of("own", own)))
                    .isInstanceOf(BadInput.class)
                    .hasMessageContaining("is not a name for templates here");
        }
    }

    @Test
    void a_file_that_is_no_template_is_told_with_the_nearest_name() throws IOException {
        Path own = own("own", "descripton.txt", "x");

        assertThatThrownBy(() -> PublishTemplates.withOwn(Map.of("publish-templates", own)))
                .isInstanceOf(BadInput.class)
                .hasMessageStartingWith(
                        "publish-templates/descripton.txt: no template has this name; did you mean “description.txt”?");
    }

    @Test
    void a_page_that_is_not_well_formed_cannot_be_printed_and_says_so() throws IOException {
        Path own = own("own", "recipe.html", "<html><body><p>{{title}}<br></body></html>");
        PublishTemplates templates = PublishTemplates.withOwn(Map.of("publish-templates", own));

        assertThat(RecipePage.html(TestEditions.pearCake(), DescriptionSettings.usual(), templates))
                .contains("<p>Pear and rye cake<br>");
        assertThatThrownBy(() -> RecipePage.pdf(TestEditions.pearCake(), DescriptionSettings.usual(), templates))
                .isInstanceOf(BadInput.class)
                .hasMessageStartingWith(
                        "publish-templates/recipe.html: the page that this template makes cannot be printed");
    }

    private static Description described(Map<String, Path> folders) {
        return Describer.describe(
                TestEditions.pearCake(), DescriptionSettings.usual(), PublishTemplates.withOwn(folders));
    }

    private Path own(String name, String file, String text) throws IOException {
        Path own = Files.createDirectories(folder.resolve(name));
        Files.writeString(own.resolve(file), text);
        return own;
    }
}
