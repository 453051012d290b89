package org.misecue.desk.door;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;

/** The keys to a desk. They live as long as it is open and are kept nowhere. */
public final class Keys {

    /** 192 bits, more than anybody can try. */
    private static final int BYTES = 24;

    /** Codes are typed on phones: without letters and digits that look alike. */
    private static final String CODE_SIGNS = "23456789abcdefghjkmnpqrstuvwxyz";

    private static final int CODE_LENGTH = 8;
    private static final int MOST_TRIES = 5;

    private final SecureRandom random = new SecureRandom();
    private final String owner = key();
    private final List<String> guests = new CopyOnWriteArrayList<>();
    private final Consumer<String> tellCode;
    private String code = "";
    private int triesLeft;

    /** @param tellCode shows the owner each new code for guests */
    public Keys(Consumer<String> tellCode) {
        this.tellCode = tellCode;
    }

    /** The owner's. */
    public String owner() {
        return owner;
    }

    /** Whose key this is. */
    Who holder(String key) {
        if (same(key, owner)) {
            return Who.OWNER;
        }
        return guests.stream().anyMatch(guest -> same(key, guest)) ? Who.GUEST : Who.PASSER_BY;
    }

    /** Makes a code by which one guest can come in; an earlier one is void. */
    public synchronized void invite() {
        StringBuilder signs = new StringBuilder();
        for (int i = 0; i < CODE_LENGTH; i++) {
            signs.append(CODE_SIGNS.charAt(random.nextInt(CODE_SIGNS.length())));
        }
        code = signs.toString();
        triesLeft = MOST_TRIES;
        tellCode.accept(code);
    }

    /**
     * A key for whoever knows the code. It opens once; after a guest came in, or after a few wrong tries, there is another.
     *
     * @return empty if that is not the code
     */
    synchronized Optional<String> admit(String tried) {
        if (code.isEmpty()) {
            return Optional.empty();
        }
        if (same(tried.strip().toLowerCase(java.util.Locale.ROOT), code)) {
            String guest = key();
            guests.add(guest);
            invite();
            return Optional.of(guest);
        }
        triesLeft--;
        if (triesLeft == 0) {
            invite();
        }
        return Optional.empty();
    }

    private String key() {
        byte[] bytes = new byte[BYTES];
        random.nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    /** Takes equally long wherever the two differ. */
    private static boolean same(String tried, String key) {
        return MessageDigest.isEqual(tried.getBytes(UTF_8), key.getBytes(UTF_8));
    }
}
