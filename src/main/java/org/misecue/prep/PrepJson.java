package org.misecue.prep;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.UncheckedIOException;
import java.time.LocalDateTime;
import java.util.Collection;
import java.util.Locale;
import java.util.Optional;
import org.misecue.pantry.Allergen;
import org.misecue.quantity.Amount;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import tech.units.indriya.function.RationalNumber;

/** The plan as the JSON document of {@code prep --json}. Keys may be added to it, never changed. */
public final class PrepJson {

    private static final ObjectMapper MAPPER = new ObjectMapper();

    private PrepJson() {}

    /** Indented, with a line end at the end. */
    public static String of(PrepPlan plan) {
        ObjectNode root = MAPPER.createObjectNode();
        root.put("title", plan.title());
        root.put("factor", Rationals.decimal(plan.factor()));
        root.put("takes", plan.takes());
        root.put("spare", plan.sets().spare());
        ArrayNode bowls = root.putArray("bowls");
        plan.bowls().forEach(bowl -> write(plan, bowl, bowls.addObject()));
        ArrayNode spares = root.putArray("spares");
        plan.spares().forEach(spare -> write(spare, spares.addObject()));
        ArrayNode swapOuts = root.putArray("swapOuts");
        plan.swapOuts().forEach(swapOut -> write(plan, swapOut, swapOuts.addObject()));
        ArrayNode suggestions = root.putArray("worthMakingEarlier");
        plan.suggestions().forEach(swapOut -> suggestions
                .addObject()
                .put("after", swapOut.after())
                .put("state", swapOut.state())
                .put("waits", swapOut.waits().toString()));
        ObjectNode grams = root.putObject("grams");
        grams.put("batch", Rationals.decimal(plan.tally().batch()));
        grams.put("spares", Rationals.decimal(plan.tally().spares()));
        grams.put("madeEarlier", Rationals.decimal(plan.tally().earlier()));
        grams.put("all", Rationals.decimal(plan.tally().all()));
        grams.put("beyondOneDish", Rationals.decimal(plan.tally().beyond()));
        grams.put("atLeast", plan.tally().leastOnly());
        ArrayNode toHand = root.putArray("toHand");
        plan.toHand().forEach(thing -> write(thing, toHand.addObject()));
        ArrayNode jobs = root.putArray("jobs");
        plan.jobs().forEach(job -> write(plan, job, jobs.addObject()));
        ArrayNode kit = root.putArray("kit");
        plan.kit().forEach(item -> kit.add(item.what()));
        ArrayNode shopping = root.putArray("shopping");
        plan.shopping().forEach(purchase -> write(purchase, shopping.addObject()));
        ArrayNode cautions = root.putArray("cautions");
        plan.cautions().forEach(caution -> cautions.addObject()
                .put("what", caution.what())
                .put("where", caution.where())
                .put("source", caution.source()));
        ArrayNode notes = root.putArray("notes");
        plan.notes()
                .forEach(note ->
                        notes.addObject().put("line", note.place().line()).put("note", note.sentence()));
        try {
            return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void write(PrepPlan plan, Bowl bowl, ObjectNode out) {
        out.put("number", bowl.number());
        out.put("name", bowl.name());
        out.put("component", bowl.component());
        out.put("step", bowl.step());
        texts(out.putArray("laterSteps"), bowl.laterSteps());
        out.put("take", bowl.take());
        out.put("vessel", bowl.vessel().words());
        ArrayNode contents = out.putArray("contents");
        for (Content content : bowl.contents()) {
            ObjectNode node = contents.addObject();
            node.put("ingredient", content.ingredient());
            write(Optional.of(content.weighed()), node);
            number(node, "grams", content.grams());
            node.put("preparation", content.preparation());
        }
        write(bowl.allergens(), out);
        texts(out.putArray("cautions"), plan.cautions(bowl));
        out.put("ticked", plan.isTicked(bowl));
        bowl.reading().ifPresent(reading -> {
            ObjectNode node = out.putObject("onScale");
            node.put("grams", Rationals.decimal(reading.grams()));
            node.put("tolerance", Rationals.decimal(reading.tolerance()));
            node.put("about", reading.about());
        });
    }

    private static void write(Spare spare, ObjectNode out) {
        out.put("ingredient", spare.content().ingredient());
        write(Optional.of(spare.content().weighed()), out);
        number(out, "grams", spare.content().grams());
        out.put("for", spare.kind().name().toLowerCase(Locale.ROOT));
        out.put("step", spare.step());
        texts(out.putArray("bowls"), spare.bowls());
        out.put("why", spare.why());
        out.put("source", spare.source());
        write(spare.allergens(), out);
    }

    private static void write(PrepPlan plan, SwapOut swapOut, ObjectNode out) {
        out.put("after", swapOut.after());
        out.put("state", swapOut.state());
        out.put("shownIn", swapOut.shownIn());
        texts(out.putArray("steps"), swapOut.steps());
        out.put("work", swapOut.work().toString());
        out.put("begin", swapOut.begin().map(LocalDateTime::toString).orElse(null));
        ArrayNode bowls = out.putArray("bowls");
        swapOut.bowls().forEach(bowl -> write(plan, bowl, bowls.addObject()));
    }

    private static void write(ToHand thing, ObjectNode out) {
        out.put("component", thing.component());
        out.put("ingredient", thing.line().ingredient());
        out.put("text", thing.line().text());
        texts(out.putArray("steps"), thing.steps());
        write(thing.allergens(), out);
    }

    private static void write(Carries allergens, ObjectNode out) {
        ArrayNode certain = out.putArray("allergens");
        texts(certain, allergens.certain());
        texts(certain, allergens.elsewhere());
        texts(out.putArray("checkLabel"), allergens.checkLabel());
        texts(out.putArray("unknown"), allergens.unknown());
    }

    private static void write(PrepPlan plan, Job job, ObjectNode out) {
        out.put("what", job.what());
        out.put("before", job.before().toString());
        out.put("for", job.forWhat());
        out.put("step", job.step());
        out.put("at", job.at().map(LocalDateTime::toString).orElse(null));
        out.put("limit", job.limit().map(limit -> limit.within().toString()).orElse(null));
        out.put(
                "latest",
                job.limit().flatMap(RoomLimit::by).map(LocalDateTime::toString).orElse(null));
        out.put("advice", job.limit().map(RoomLimit::advice).orElse(""));
        out.put("limitSource", job.limit().isPresent() ? RoomLimit.SOURCE : null);
        out.put("why", job.why());
        out.put("source", job.source());
        texts(out.putArray("cautions"), plan.cautions(job));
        out.put("letter", plan.letter(job));
        out.put("ticked", plan.isTicked(job));
    }

    private static void write(Purchase purchase, ObjectNode out) {
        out.put("aisle", purchase.aisle());
        out.put("ingredient", purchase.ingredient());
        write(purchase.quantity(), out);
        ArrayNode packs = out.putArray("packs");
        for (Pack pack : purchase.packs().packs()) {
            ObjectNode node = packs.addObject().put("count", pack.count()).put("what", pack.word());
            write(Optional.of(pack.size()), node);
        }
        ObjectNode over = out.putObject("over");
        write(purchase.packs().over(), over);
        texts(out.putArray("remarks"), purchase.remarks());
    }

    /** Amount, upper end where it is a range, unit; all null where nothing is stated. */
    private static void write(Optional<Quantity> quantity, ObjectNode out) {
        Optional<RationalNumber> least = quantity.map(Quantity::amount).flatMap(Amount::least);
        Optional<RationalNumber> most = quantity.map(Quantity::amount).flatMap(Amount::most);
        number(out, "amount", least);
        number(out, "amountMax", most.equals(least) ? Optional.empty() : most);
        out.put("unit", quantity.map(known -> known.unit().code()).orElse(null));
    }

    private static void number(ObjectNode out, String key, Optional<RationalNumber> value) {
        out.put(key, value.map(Rationals::decimal).orElse(null));
    }

    private static void texts(ArrayNode out, Collection<?> values) {
        for (Object value : values) {
            if (value instanceof Integer number) {
                out.add(number);
            } else {
                out.add(value instanceof Allergen allergen ? allergen.label() : value.toString());
            }
        }
    }
}
