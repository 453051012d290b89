package org.misecue.recipe.manuscript;

import java.util.List;

/**
 * A document as lines.
 *
 * @param title what the document itself calls its dish; empty where it does not say
 * @param lines in order, none of them empty
 */
public record Manuscript(String title, List<Line> lines) {}
