package org.misecue.compare;

import java.util.List;
import org.misecue.quantity.Quantity;

/** An ingredient that was added with a stated amount and that no line of the recipe has. */
public record Unwritten(String ingredient, Quantity quantity, Confidence confidence, List<Evidence> evidence) {}
