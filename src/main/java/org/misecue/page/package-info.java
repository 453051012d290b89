/**
 * Pages that people read: {@link org.misecue.page.Pages} fills a template of {@code src/main/jte} and escapes what it
 * prints, {@link org.misecue.page.Pdf} makes a PDF of a page without fetching anything; {@link org.misecue.page.CsvCell}
 * keeps a table's cells from being taken for formulas. Knows no part of the job.
 */
@NullMarked
package org.misecue.page;

import org.jspecify.annotations.NullMarked;
