package org.misecue.claims;

import java.util.List;
import java.util.Set;
import org.misecue.pantry.Allergen;

/**
 * What a claim can deny: one row of {@code denials.csv}.
 *
 * @param nouns what stands beside "free", "no", "without", as words
 * @param alone what claims it without such a word
 * @param eaters whom it would suit
 * @param heard what recognisers write for one of them
 * @param allergens that contradict it, of the EU's fourteen
 * @param substances that contradict it, by their keys in the pantry
 * @param open why it can't be known where nothing contradicts it; may be empty
 * @param law what the words are bound to; may be empty
 */
record Denial(
        String key,
        List<List<String>> nouns,
        List<List<String>> alone,
        List<List<String>> eaters,
        List<List<String>> heard,
        Set<Allergen> allergens,
        Set<String> substances,
        String open,
        String law) {}
