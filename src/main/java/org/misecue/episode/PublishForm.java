package org.misecue.episode;

import java.net.URI;
import java.net.URISyntaxException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.time.format.ResolverStyle;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import org.misecue.episode.EpisodeSettings.Links;
import org.misecue.episode.EpisodeSettings.Publish;
import org.misecue.episode.EpisodeSettings.Web;

/** The block {@code publish:}. */
final class PublishForm {

    static final List<String> KEYS = List.of(
            "max-length",
            "household",
            "first",
            "case",
            "method",
            "film",
            "batch",
            "language",
            "links",
            "summary",
            "url",
            "video-url",
            "embed-url",
            "thumbnail",
            "image",
            "date",
            "author",
            "publisher");

    /** Those whose labels are in the program. */
    private static final List<Locale> LANGUAGES = List.of(Locale.ENGLISH, Locale.FRENCH);

    private static final DateTimeFormatter DAY =
            DateTimeFormatter.ofPattern("uuuu-MM-dd", Locale.ROOT).withResolverStyle(ResolverStyle.STRICT);

    private static final int LONGEST_ADDRESS = 2000;

    private final StrictMap map;

    private PublishForm(StrictMap map) {
        this.map = map;
    }

    static Publish publish(StrictMap map) {
        return new PublishForm(map).publish();
    }

    private Publish publish() {
        Publish usual = EpisodeSettings.DEFAULT.publish();
        int length = map.whole("max-length", 100, 1_000_000, 5000);
        return new Publish(
                map.has("max-length") ? OptionalInt.of(length) : usual.maxLength(),
                map.text("household", "household: us")
                        .map(text -> SettingsForm.household(map, "household", text))
                        .orElse(usual.household()),
                map.choice("first", "metric", "household", usual.metricFirst()),
                map.choice("case", "bold", "capitals", usual.stars()),
                map.choice("method", "yes", "no", usual.method()),
                text("film", "narration/main.vtt"),
                map.section("batch", BatchForm.KEYS).map(BatchForm::batch).orElse(usual.batch()),
                labels(usual.labels()),
                links(usual.links()),
                web());
    }

    private Optional<String> text(String key, String example) {
        return map.text(key, key + ": " + example).filter(text -> !text.isEmpty());
    }

    private Locale labels(Locale usual) {
        Optional<String> tag = text("language", "fr");
        if (tag.isEmpty()) {
            return usual;
        }
        Locale wanted = Locale.forLanguageTag(tag.get());
        return LANGUAGES.stream()
                .filter(known -> known.getLanguage().equals(wanted.getLanguage()))
                .findFirst()
                .map(known -> wanted)
                .orElseThrow(() -> map.wrong("language", "a language of labels, en or fr", "language: fr"));
    }

    private Links links(Links usual) {
        Optional<String> word = text("links", "drop");
        if (word.isEmpty()) {
            return usual;
        }
        return List.of(Links.values()).stream()
                .filter(links -> links.name().toLowerCase(Locale.ROOT).equals(word.get()))
                .findFirst()
                .orElseThrow(() -> map.wrong("links", "keep, note or drop", "links: drop"));
    }

    private Web web() {
        return new Web(
                text("summary", "A soft cake under roasted plums."),
                address("url", "https://example.org/plum-cake"),
                address("video-url", "https://example.org/plum-cake.mp4"),
                address("embed-url", "https://example.org/player/plum-cake"),
                address("thumbnail", "https://example.org/plum-cake.jpg"),
                address("image", "https://example.org/plum-cake-whole.jpg"),
                date(),
                text("author", "the name of a person"),
                text("publisher", "the name of your kitchen"));
    }

    /** Of a page or file on the web: nothing that runs, and nothing on this machine. */
    private Optional<URI> address(String key, String example) {
        Optional<String> text = text(key, example);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        try {
            URI address = new URI(text.get());
            String scheme =
                    address.getScheme() == null ? "" : address.getScheme().toLowerCase(Locale.ROOT);
            boolean web = (scheme.equals("https") || scheme.equals("http"))
                    && address.getHost() != null
                    && address.getUserInfo() == null
                    && text.get().length() <= LONGEST_ADDRESS;
            if (web) {
                return Optional.of(address);
            }
        } catch (URISyntaxException noAddress) {
            // told below
        }
        throw map.wrong(key, "a web address beginning with https://", key + ": " + example);
    }

    private Optional<LocalDate> date() {
        try {
            return text("date", "2026-05-18").map(day -> LocalDate.parse(day, DAY));
        } catch (DateTimeParseException e) {
            throw map.wrong("date", "a day", "date: 2026-05-18");
        }
    }
}
