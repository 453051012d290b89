package org.misecue.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.misecue.spoken.Mechanism;

/** Writes another amount into each agreeing line that is easy to change, one at a time: each must come out as differing. */
final class Mutations {

    private static final double FACTOR = 1.6;

    private static final Pattern ITEM = Pattern.compile("\\s*[-*•] .*", Pattern.DOTALL);
    private static final Pattern NUMBERED =
            Pattern.compile("\\d|[½¼¾⅓⅔⅛]|pinch|handful|\\b(one|two|three|half|few)\\b");

    /** A line with one plain whole number in front and none behind. */
    private static final Pattern EASY =
            Pattern.compile("(\\s*[-*•] )(\\d+)(?=( ?(g|kg|ml|l|tsp|tbsp)\\b| [a-z]))(?!.*[(/]|\\d* ?[x×–-])");

    /** One changed amount and what the comparison says of it. */
    private record Changed(EpisodeCase in, Row row, double amount, String verdict) {
        @Override
        public String toString() {
            return String.format(
                    Locale.ROOT,
                    "%s: %s %s written as %.0f: %s",
                    in.name(),
                    row.ingredient(),
                    row.written(),
                    amount,
                    verdict);
        }
    }

    private Mutations() {}

    /** What becomes of all of them; the last line holds the figures. */
    static List<String> report(List<EpisodeCase> cases, boolean rows) {
        List<Changed> all = cases.stream().flatMap(one -> of(one).stream()).toList();
        List<Changed> still = all.stream()
                .filter(one -> one.verdict().equals("agrees") || one.verdict().equals("approximate"))
                .toList();
        List<Changed> missed = all.stream()
                .filter(one -> !one.verdict().equals("differs") && !still.contains(one))
                .toList();
        List<String> lines = new ArrayList<>();
        still.forEach(one -> lines.add("  " + one));
        if (rows) {
            missed.forEach(one -> lines.add("  " + one));
        }
        int caught = all.size() - still.size() - missed.size();
        lines.add(String.format(
                Locale.ROOT,
                "%d changed amounts: caught %.3f, missed %d, still agreeing %d",
                all.size(),
                (double) caught / Math.max(1, all.size()),
                missed.size(),
                still.size()));
        return lines;
    }

    private static List<Changed> of(EpisodeCase one) {
        List<String> lines = lines(one);
        List<Integer> items = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            if (ITEM.matcher(lines.get(i)).matches()
                    && NUMBERED.matcher(lines.get(i)).find()) {
                items.add(i);
            }
        }
        List<Changed> changed = new ArrayList<>();
        if (items.size() == one.truth().written().size()) {
            for (int row = 0; row < items.size(); row++) {
                Row truth = one.truth().written().get(row);
                Matcher easy = EASY.matcher(lines.get(items.get(row)));
                if (truth.verdict().equals("agrees") && easy.lookingAt() && isAmount(easy.group(2), truth)) {
                    changed.add(change(one, lines, items.get(row), row, easy));
                }
            }
        }
        return changed;
    }

    private static boolean isAmount(String number, Row truth) {
        return truth.amount().isPresent() && truth.amount().getAsDouble() == Integer.parseInt(number);
    }

    private static Changed change(EpisodeCase one, List<String> lines, int at, int row, Matcher easy) {
        long amount = other(Integer.parseInt(easy.group(2)));
        List<String> recipe = new ArrayList<>(lines);
        recipe.set(at, easy.group(1) + amount + lines.get(at).substring(easy.end()));
        List<Row> written = new ArrayList<>(one.truth().written());
        Row truth = written.get(row);
        written.set(row, truth.with(amount));
        Rows got = Rows.of(one.withRecipe(String.join("", recipe)).compare(EnumSet.allOf(Mechanism.class)));
        Row reported = Pairing.ofLines(written, got.written()).get(row);
        return new Changed(one, truth, amount, reported == null ? Judged.MISSING : reported.verdict());
    }

    /** A rounder number where the amount is large enough to be round. */
    private static long other(int amount) {
        return amount >= 20
                ? Math.round(Math.rint(amount * FACTOR / 5) * 5)
                : amount + Math.max(2, Math.round(Math.rint(amount * (FACTOR - 1))));
    }

    private static List<String> lines(EpisodeCase one) {
        try {
            return List.of(one.recipeText().split("(?<=\n)"));
        } catch (IOException e) {
            throw new UncheckedIOException(one.name() + ": the recipe is no text", e);
        }
    }
}
