package org.misecue.pantry;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Where an ingredient is kept before it is opened: common practice, no source; the packet comes first. */
public enum Storage {
    CUPBOARD,
    /** A larder, a fruit bowl or the fridge's drawer: no clock runs when it stands out. */
    COOL,
    FRIDGE,
    FREEZER;

    /** As a row of the pantry writes it. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    static Optional<Storage> ofKey(String key) {
        return Arrays.stream(values()).filter(one -> one.key().equals(key)).findFirst();
    }

    static List<String> keys() {
        return Arrays.stream(values()).map(Storage::key).toList();
    }
}
