package org.misecue.prep;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;

/** Everything of the plan that gets a box, in the order of the day. */
public final class Checklist {

    private Checklist() {}

    /**
     * A line of the list, or a heading where it has no boxes and is bold.
     *
     * @param boxes how many; a bowl has one for each set
     * @param lead in bold: number, letter and time
     * @param care in the colour of cautions; empty for nothing
     */
    public record Item(int boxes, boolean ticked, String lead, String text, String care) {

        public boolean isHeading() {
            return boxes == 0 && !lead.isEmpty();
        }

        /** All of it, for measuring. */
        String words() {
            return String.join(" ", lead, text, care).strip();
        }
    }

    static List<Item> of(PrepPlan plan) {
        List<Item> items = new ArrayList<>();
        section(items, "Jobs", plan.jobs().stream().map(job -> job(plan, job)));
        String each = plan.sets().all() > 1 ? "Bowls, a box for each set" : "Bowls";
        section(items, each, plan.bowlsOf(1).stream().map(bowl -> bowl(plan, bowl)));
        section(
                items,
                "Made earlier",
                plan.swapOuts().stream()
                        .map(swapOut -> line(
                                plan.isTicked(swapOut),
                                PrepWords.swapOut(swapOut) + "; "
                                        + Wording.bowls(swapOut.bowls().stream()
                                                .map(Bowl::number)
                                                .toList()))));
        section(
                items,
                "Once more",
                plan.spares().stream().map(spare -> line(plan.isTicked(spare), PrepWords.spare(spare))));
        section(
                items,
                "To hand",
                plan.toHand().stream().map(thing -> open(thing.line().text())));
        section(items, "Kit", plan.kit().stream().map(item -> open(item.what())));
        section(items, "Shopping", plan.shopping().stream().map(purchase -> open(PrepWords.bought(purchase))));
        section(
                items,
                "All day",
                plan.cautions().stream()
                        .filter(caution ->
                                caution.bowls().isEmpty() && caution.steps().isEmpty())
                        .map(caution -> new Item(0, false, "", "", caution.brief())));
        items.add(new Item(0, false, "", PrepPlan.LAW, ""));
        return Collections.unmodifiableList(items);
    }

    private static void section(List<Item> items, String heading, Stream<Item> section) {
        List<Item> lines = section.toList();
        if (!lines.isEmpty()) {
            items.add(new Item(0, false, heading, "", ""));
            items.addAll(lines);
        }
    }

    private static Item job(PrepPlan plan, Job job) {
        String care = job.limit().isEmpty() ? "" : "(" + PrepWords.backBy(job) + ")";
        String lead = plan.letter(job) + " " + PrepWords.clockOrAhead(job);
        return new Item(1, plan.isTicked(job), lead, job.what(), care);
    }

    private static Item bowl(PrepPlan plan, Bowl bowl) {
        String number = String.valueOf(bowl.number());
        return new Item(plan.sets().all(), plan.isTicked(bowl), number, PrepWords.inShort(bowl), "");
    }

    private static Item open(String text) {
        return line(false, text);
    }

    private static Item line(boolean ticked, String text) {
        return new Item(1, ticked, "", text, "");
    }
}
