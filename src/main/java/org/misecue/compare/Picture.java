package org.misecue.compare;

import java.util.List;
import java.util.Map;
import org.misecue.shown.Card;

/**
 * What the films show in writing.
 *
 * @param cards in the order of the films and of their times
 * @param narrations by film, the narrations that run on its clock, where there are any: they tell which step is on
 */
public record Picture(List<Card> cards, Map<String, List<String>> narrations) {

    public static final Picture NONE = new Picture(List.of(), Map.of());
}
