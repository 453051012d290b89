package org.misecue.publish;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The recipe as a page of its own, with its data for machines inside. The same page is printed. Nothing in it is fetched
 * from elsewhere, and no text of a recipe can become markup.
 */
public final class RecipePage {

    private RecipePage() {}

    /**
     * @param data the schema.org document, whose text cannot end a script
     * @throws org.misecue.notice.BadInput where a template makes an endless text
     */
    public static String html(Edition edition, DescriptionSettings settings, PublishTemplates templates, String data) {
        Map<String, Object> names = new LinkedHashMap<>(new PublishedNames(edition, settings).all());
        names.put("json-ld", data.strip());
        return templates.page().fill(names).strip() + "\n";
    }
}
