package org.misecue.prep;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.misecue.quantity.Unit;

/** One line of text for each thing of the plan, the same on every sheet. */
public final class PrepWords {

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("EEE HH:mm", Locale.UK);

    private PrepWords() {}

    /** "Tue 07:30 (2 h ahead)" or "2 h ahead". */
    public static String when(Job job) {
        String ahead = Wording.duration(job.before()) + " ahead";
        return job.at().map(time -> CLOCK.format(time) + " (" + ahead + ")").orElse(ahead);
    }

    /** "Tue 07:30"; empty where the first shot has no time. */
    public static String clock(Job job) {
        return job.at().map(CLOCK::format).orElse("");
    }

    /** "Used or back in the fridge by Tue 10:05, 2 h after it came out"; empty where nothing comes out. */
    public static String limit(Job job) {
        return job.limit().map(PrepWords::limit).orElse("");
    }

    private static String limit(RoomLimit limit) {
        String by = limit.by().map(time -> "by " + CLOCK.format(time) + ", ").orElse("");
        return ("Used or back in the fridge " + by + Wording.duration(limit.within())
                        + " after it came out, all takes added up; after 1 h where it is hotter than 32 °C. "
                        + limit.advice())
                .strip();
    }

    /** "Tue 07:30", or "2 h ahead" where the first shot has no time. */
    public static String clockOrAhead(Job job) {
        return job.at().map(CLOCK::format).orElse(Wording.duration(job.before()) + " ahead");
    }

    /** "caster sugar 100 g"; of several things the name alone with how many they are. */
    public static String inShort(Bowl bowl) {
        return bowl.contents().size() == 1
                ? bowl.name() + " " + Measures.text(bowl.contents().get(0).weighed())
                : bowl.name() + ", " + bowl.contents().size() + " things";
    }

    /** "caster sugar, 1 × 1 kg bag": what is taken off the shelf. */
    public static String bought(Purchase purchase) {
        List<Pack> packs = purchase.packs().packs();
        String amount = packs.isEmpty()
                ? purchase.quantity().map(Measures::text).orElse("some")
                : packs.stream().map(PrepWords::pack).collect(Collectors.joining(" + "));
        return purchase.ingredient() + ", " + amount;
    }

    /** The class of a box on a page: empty, or filled. */
    public static String box(boolean ticked) {
        return ticked ? "box done" : "box";
    }

    /** "back in the fridge by Tue 10:05"; empty where nothing comes out. */
    public static String backBy(Job job) {
        return job.limit()
                .map(limit -> limit.by()
                        .map(time -> "used or back in the fridge by " + CLOCK.format(time))
                        .orElse("used or back in the fridge after " + Wording.duration(limit.within())))
                .orElse("");
    }

    /** "small bowl, sponge, step 2". */
    public static String place(Bowl bowl) {
        return bowl.vessel().words() + ", " + where(bowl);
    }

    /** "225 g", "1 tsp (5 g)". */
    public static String amount(Content content) {
        String besides = Measures.besides(content);
        return Measures.text(content.weighed()) + (besides.isEmpty() ? "" : " (" + besides + ")");
    }

    /** The amount as it stands before the name: "225 g", "a pinch of". */
    public static String quantity(Content content) {
        boolean pinch = content.weighed().unit() == Unit.PINCH;
        return Measures.text(content.weighed()) + (pinch ? " of" : "");
    }

    /** "225 g caster sugar, sifted". */
    public static String content(Content content) {
        String preparation = content.preparation().isEmpty() ? "" : ", " + content.preparation();
        String besides = Measures.besides(content);
        return quantity(content) + (besides.isEmpty() ? " " : " (" + besides + ") ") + content.label() + preparation;
    }

    /** "Contains MILK; check the label: NUTS"; empty where nothing is known or open. */
    public static String allergens(Carries allergens) {
        String certain = allergens.certainWords();
        String open = allergens.openWords();
        if (certain.isEmpty()) {
            return Wording.upperFirst(open);
        }
        return "Contains " + certain + (open.isEmpty() ? "" : "; " + open);
    }

    /** "caster sugar, 350 g (and some for dusting)". */
    public static String purchase(Purchase purchase) {
        String amount = purchase.quantity()
                .map(quantity -> ", " + Measures.text(quantity))
                .orElse("");
        String remarks = purchase.remarks().isEmpty() ? "" : " (" + String.join("; ", purchase.remarks()) + ")";
        String packs = packs(purchase.packs());
        return purchase.ingredient() + amount + remarks + (packs.isEmpty() ? "" : " → " + packs);
    }

    /** "1 × 1 kg bag (170 g over)"; empty for what is sold loose. */
    public static String packs(Packs packs) {
        String taken = packs.packs().stream().map(PrepWords::pack).collect(Collectors.joining(" + "));
        String over = packs.over()
                .filter(left -> left.amount().least().orElseThrow().signum() > 0)
                .map(left -> " (" + Measures.text(left) + " over)")
                .orElse("");
        return taken + over;
    }

    private static String pack(Pack pack) {
        String size = Measures.text(Measures.large(pack.size()));
        String words = pack.size().unit() == Unit.EACH ? pack.word() + " of " + size : size + " " + pack.word();
        return (pack.count() + " × " + words).strip();
    }

    /** "1 large egg, if it fails: bowl 3, step 2". */
    public static String spare(Spare spare) {
        return content(spare.content()) + ", " + spare.kind().words() + ": " + Wording.bowls(spare.bowls())
                + (spare.step() == 0 ? "" : ", step " + spare.step());
    }

    /** "cake, cooled: ready before step 9". */
    public static String swapOut(SwapOut swapOut) {
        return Wording.upperFirst(swapOut.state()) + ": " + swapOut.ready();
    }

    /** How it is made and when. */
    public static String making(SwapOut swapOut) {
        List<Integer> bowls = swapOut.bowls().stream().map(Bowl::number).toList();
        String begin =
                swapOut.begin().map(time -> "; begin by " + CLOCK.format(time)).orElse("");
        return "%s%s; %s of work and waiting%s"
                .formatted(
                        Wording.upperFirst(Wording.steps(swapOut.steps())),
                        bowls.isEmpty() ? "" : " with a set of " + Wording.bowls(bowls) + " of its own",
                        Wording.duration(swapOut.work()),
                        begin);
    }

    /** "Cake, cooled (after step 8) would save waiting 1 h 15 min: made-earlier: [8]". */
    public static String suggestion(SwapOut swapOut) {
        return "%s, %s, saves waiting %s: write made-earlier: [%d] in episode.yaml"
                .formatted(
                        Wording.upperFirst(swapOut.state()),
                        swapOut.ready(),
                        Wording.duration(swapOut.waits()),
                        swapOut.after());
    }

    /** "sponge, step 2". */
    public static String where(Bowl bowl) {
        return bowl.component().isEmpty() ? bowl.when() : bowl.component() + ", " + bowl.when();
    }

    /** Things in rows of so many, the last row perhaps shorter. */
    public static <T> List<List<T>> rows(List<T> things, int columns) {
        List<List<T>> rows = new ArrayList<>();
        for (int start = 0; start < things.size(); start += columns) {
            rows.add(things.subList(start, Math.min(start + columns, things.size())));
        }
        return rows;
    }
}
