package org.misecue.publish;

import java.util.Map;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;
import org.misecue.page.Pdf;

/** The published recipe as a page of its own, with the data that search engines read, and as the print of that page. */
public final class RecipePage {

    private RecipePage() {}

    /** @throws BadInput if the person's own template is wrong */
    public static String html(Edition edition, DescriptionSettings settings, PublishTemplates templates) {
        Map<String, Object> names = new PublishedNames(edition, settings).all();
        names.put("json-ld", SchemaOrg.json(edition).strip());
        return templates.page().fill(names);
    }

    /**
     * Nothing that the page names is fetched.
     *
     * @throws BadInput if the person's own template makes no page that can be printed
     */
    public static byte[] pdf(Edition edition, DescriptionSettings settings, PublishTemplates templates) {
        String page = html(edition, settings, templates);
        try {
            return Pdf.of(page);
        } catch (RuntimeException notWellFormed) {
            throw new BadInput(
                    Place.of(templates.page().file()),
                    "the page that this template makes cannot be printed; end each element that begins, as in <br/>.",
                    notWellFormed);
        }
    }
}
