package org.misecue.claims;

import java.util.Set;
import org.misecue.spoken.Words;

/** People who are vegan themselves, or who say so. */
final class Persons {

    private static final Set<String> WORDS = Words.set(
            "i i'm i've i'd we we're we've you you're you've he he's she she's who anyone someone somebody anybody "
                    + "sister brother mum mother dad father nan gran grandma niece nephew son daughter husband wife partner "
                    + "friend friends neighbour cousin aunt aunty auntie uncle kids children people guest guests customer "
                    + "customers family flatmate colleague boss doctor half flatmates");

    private Persons() {}

    static boolean isOne(String word) {
        return WORDS.contains(word);
    }
}
