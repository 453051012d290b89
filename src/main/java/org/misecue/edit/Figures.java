package org.misecue.edit;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.misecue.compare.Comparison;
import org.misecue.compare.Evidence;
import org.misecue.compare.Verdict;
import org.misecue.quantity.Amount;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.QuantityWriter;
import org.misecue.quantity.Unit;

/**
 * Amounts that captions show as figures. Only those that were said as they are written: a slip of the tongue stays in the
 * words in which the viewer hears it.
 */
public final class Figures {

    private static final Duration SAME = Duration.ofMillis(20);

    /** By source and time, the words and what is shown for them. */
    private final Map<String, TreeMap<Duration, Shown>> places = new TreeMap<>();

    private record Shown(List<String> words, String figure) {}

    private Figures() {}

    /** None: captions show the words. */
    public static Figures none() {
        return new Figures();
    }

    /** Those of a comparison. */
    public static Figures of(Comparison comparison) {
        Figures figures = new Figures();
        Stream<Evidence> written = comparison.written().stream()
                .filter(line -> line.verdict() == Verdict.AGREES)
                .flatMap(line -> line.evidence().stream());
        Stream<Evidence> settings = comparison.settings().stream()
                .filter(one -> one.verdict() == Verdict.AGREES)
                .flatMap(one -> one.evidence().stream());
        Stream.concat(written, settings)
                .filter(one ->
                        one.via() == Evidence.Via.SPOKEN && !one.deciding().isBlank())
                .forEach(figures::add);
        return figures;
    }

    private void add(Evidence evidence) {
        evidence.quantity().filter(Figures::isExact).ifPresent(quantity -> places.computeIfAbsent(
                        evidence.moment().source(), any -> new TreeMap<>())
                .put(evidence.moment().at(), new Shown(plain(evidence.deciding()), QuantityWriter.text(quantity))));
    }

    /** "three of them" stays as it is: a bare figure tells nothing more. */
    private static boolean isExact(Quantity quantity) {
        return quantity.amount() instanceof Amount.Exact && quantity.unit() != Unit.EACH;
    }

    /** Puts figures in the place of the words that said them. */
    List<Said> put(String source, List<Said> words) {
        TreeMap<Duration, Shown> here = places.getOrDefault(source, new TreeMap<>());
        List<Said> put = new ArrayList<>();
        for (int at = 0; at < words.size(); ) {
            Said word = words.get(at);
            Map.Entry<Duration, Shown> near = here.ceilingEntry(word.start().minus(SAME));
            int until = at;
            if (near != null && near.getKey().minus(word.start()).compareTo(SAME) <= 0) {
                until = at + near.getValue().words().size();
                if (until > words.size()
                        || !said(words.subList(at, until))
                                .equals(near.getValue().words())) {
                    until = at;
                }
            }
            if (until > at && near != null) {
                Said last = words.get(until - 1);
                String tail = last.text().replaceFirst("^.*?([.,;:!?…]*)$", "$1");
                put.add(new Said(near.getValue().figure() + tail, word.start(), last.end()));
                at = until;
            } else {
                put.add(word);
                at++;
            }
        }
        return put;
    }

    private static List<String> said(List<Said> words) {
        return words.stream().flatMap(word -> plain(word.text()).stream()).toList();
    }

    private static List<String> plain(String text) {
        return Stream.of(text.toLowerCase(Locale.ROOT).split("\\s+"))
                .map(word -> word.replaceAll("^[^\\p{L}\\p{N}]+|[^\\p{L}\\p{N}%°½¼¾⅓⅔⅛]+$", ""))
                .filter(word -> !word.isEmpty())
                .toList();
    }
}
