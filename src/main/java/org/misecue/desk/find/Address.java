package org.misecue.desk.find;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.math.BigDecimal;
import java.net.URLEncoder;
import java.time.Duration;

/** Addresses of moments. They can be kept and sent: they name the words, the roll and the time. */
public final class Address {

    private Address() {}

    /**
     * @param page of an episode
     * @param roll its name
     */
    public static String of(String page, String words, String roll, Duration at) {
        String asked = words.isBlank() ? "" : "q=" + encoded(words) + "&";
        return page + "?" + asked + "of=" + encoded(roll) + "&t=" + seconds(at);
    }

    public static String encoded(String text) {
        return URLEncoder.encode(text, UTF_8).replace("+", "%20");
    }

    /** Plain decimals, as scripts and addresses have them. */
    public static String seconds(Duration at) {
        return BigDecimal.valueOf(at.toMillis(), 3).stripTrailingZeros().toPlainString();
    }
}
