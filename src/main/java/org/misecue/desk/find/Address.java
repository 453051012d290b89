package org.misecue.desk.find;

import java.math.BigDecimal;
import java.time.Duration;
import org.misecue.desk.counter.OpenEpisode;

/** Addresses of moments. They can be kept and sent: they name the words, the roll and the time. */
public final class Address {

    private Address() {}

    /**
     * @param page of an episode
     * @param roll its name
     */
    public static String of(String page, String words, String roll, Duration at) {
        String asked = words.isBlank() ? "" : "q=" + OpenEpisode.part(words) + "&";
        return page + "?" + asked + "of=" + OpenEpisode.part(roll) + "&t=" + seconds(at);
    }

    /** Plain decimals, as scripts and addresses have them. */
    public static String seconds(Duration at) {
        return BigDecimal.valueOf(at.toMillis(), 3).stripTrailingZeros().toPlainString();
    }
}
