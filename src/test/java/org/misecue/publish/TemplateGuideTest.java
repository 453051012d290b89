package org.misecue.publish;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;

/** The guide for users and the names that the program knows. */
class TemplateGuideTest {

    @Test
    void the_guide_explains_every_name_a_template_may_use() throws IOException {
        String guide = Files.readString(Path.of("src/docs/publish-templates.md"));
        SoftAssertions softly = new SoftAssertions();
        TemplateNames.ALL.forEach((name, section) ->
                softly.assertThat(guide).as(name).contains("`" + name.substring(name.lastIndexOf('.') + 1) + "`"));
        softly.assertAll();
    }

    @Test
    void the_templates_that_come_with_the_program_use_every_section() {
        String both =
                PublishTemplates.text(PublishTemplates.DESCRIPTION) + PublishTemplates.text(PublishTemplates.PAGE);
        TemplateNames.ALL.forEach((name, section) -> {
            if (section && !name.equals("label")) {
                assertThat(both).contains("{{#" + name.substring(name.lastIndexOf('.') + 1) + "}}");
            }
        });
    }
}
