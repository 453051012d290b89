package org.misecue.prep;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.misecue.notice.Note;
import org.misecue.quantity.Rationals;

/** The plan as plain text, for a terminal or a message. */
public final class PrepText {

    private PrepText() {}

    public static String of(PrepPlan plan) {
        List<String> out = new ArrayList<>();
        out.add(plan.title() + ": mise en place");
        out.add(summary(plan));
        section(
                out,
                "Start ahead, earliest first",
                plan.jobs().stream().map(job -> job(plan, job)).toList());
        for (int take = 1; take <= plan.sets().all(); take++) {
            String heading = plan.sets().all() == 1 ? "Bowls" : "Bowls, " + plan.setName(take);
            section(
                    out,
                    heading,
                    plan.bowlsOf(take).stream().map(bowl -> bowl(plan, bowl)).toList());
        }
        for (SwapOut swapOut : plan.swapOuts()) {
            section(
                    out,
                    "Made earlier. " + PrepWords.swapOut(swapOut),
                    Stream.concat(
                                    Stream.of("  " + box(plan.isTicked(swapOut)) + " " + PrepWords.making(swapOut)),
                                    swapOut.bowls().stream().map(bowl -> bowl(plan, bowl)))
                            .toList());
        }
        section(
                out,
                "Once more, for all takes",
                plan.spares().stream().map(spare -> spare(plan, spare)).toList());
        out.add("");
        out.add(plan.tally().words());
        section(
                out,
                "To hand, not weighed",
                plan.toHand().stream().map(PrepText::toHand).toList());
        section(out, "Kit", plan.kit().stream().map(PrepText::kit).toList());
        section(
                out,
                plan.sets().spare() == 0
                        ? "Shopping, for all takes, rounded up"
                        : "Shopping, for " + plan.sets().words() + ", rounded up",
                plan.shopping().stream().map(PrepText::purchase).toList());
        section(
                out,
                "Take care",
                plan.cautions().stream().map(PrepText::caution).toList());
        if (!plan.cautions().isEmpty()) {
            out.add("  " + PrepPlan.LAW);
        }
        section(
                out,
                "Worth making earlier",
                plan.suggestions().stream()
                        .map(swapOut -> "  " + PrepWords.suggestion(swapOut))
                        .toList());
        section(
                out,
                "To settle before filming",
                plan.notes().stream().map(PrepText::note).toList());
        return String.join("\n", out) + "\n";
    }

    /** "12 bowls for 1 take, batch × 2". */
    public static String summary(PrepPlan plan) {
        String batch = Wording.batch(Rationals.decimal(plan.factor()));
        return Wording.count(plan.bowlsOf(1).size(), "bowl") + " for "
                + (plan.takes() == 1 ? "one take" : "each of " + plan.takes() + " takes")
                + (plan.sets().spare() == 0 ? "" : " and " + plan.sets().spare() + " spare")
                + (batch.isEmpty() ? "" : ", batch " + batch);
    }

    private static void section(List<String> out, String heading, List<String> items) {
        if (!items.isEmpty()) {
            out.add("");
            out.add(heading);
            out.addAll(items);
        }
    }

    private static String job(PrepPlan plan, Job job) {
        return "  " + box(plan.isTicked(job)) + " " + plan.letter(job) + "  " + PrepWords.when(job) + ": " + job.what()
                + "\n      for " + job.forWhat() + ". " + job.why() + " (" + job.source() + ")" + limit(job)
                + care("\n      ! ", plan.cautions(job));
    }

    private static String limit(Job job) {
        return job.limit().isEmpty() ? "" : "\n      ! " + PrepWords.limit(job) + " (" + RoomLimit.SOURCE + ")";
    }

    private static String bowl(PrepPlan plan, Bowl bowl) {
        String head = "  %s %2d  %s – %s"
                .formatted(
                        box(plan.isTicked(bowl)),
                        bowl.number(),
                        Wording.upperFirst(bowl.name()),
                        PrepWords.place(bowl));
        List<String> lines = new ArrayList<>(List.of(head));
        bowl.contents().forEach(content -> lines.add("          " + PrepWords.content(content)));
        bowl.reading().ifPresent(reading -> lines.add("          on the scale: " + reading.words()));
        String allergens = PrepWords.allergens(bowl.allergens());
        if (!allergens.isEmpty()) {
            lines.add("          " + allergens);
        }
        return String.join("\n", lines) + care("\n          ! ", plan.cautions(bowl));
    }

    private static String box(boolean ticked) {
        return ticked ? "[x]" : "[ ]";
    }

    private static String care(String lead, List<String> briefs) {
        return briefs.isEmpty() ? "" : lead + String.join("; ", briefs);
    }

    private static String spare(PrepPlan plan, Spare spare) {
        String allergens = PrepWords.allergens(spare.allergens());
        return "  " + box(plan.isTicked(spare)) + " " + PrepWords.spare(spare) + "\n      " + spare.why() + " ("
                + spare.source() + ")" + (allergens.isEmpty() ? "" : "\n      " + allergens);
    }

    private static String toHand(ToHand thing) {
        String allergens = PrepWords.allergens(thing.allergens());
        return "  [ ] " + thing.line().text() + (thing.steps().isEmpty() ? "" : " – " + Wording.steps(thing.steps()))
                + (allergens.isEmpty() ? "" : "\n          " + allergens);
    }

    private static String kit(KitItem item) {
        return "  [ ] " + item.what() + (item.steps().isEmpty() ? "" : " – " + Wording.steps(item.steps()));
    }

    private static String purchase(Purchase purchase) {
        return "  [ ] " + purchase.aisle() + ": " + PrepWords.purchase(purchase);
    }

    private static String caution(Caution caution) {
        return "  ! " + caution.where() + ": " + caution.what() + " (" + caution.source() + ")";
    }

    private static String note(Note note) {
        return "  " + note;
    }
}
