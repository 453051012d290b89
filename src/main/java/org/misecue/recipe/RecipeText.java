package org.misecue.recipe;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.misecue.quantity.Amount;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.QuantityWriter;
import org.misecue.quantity.Unit;

/** How a recipe was understood, as plain text for people: line by line, step by step, with what was not understood. */
public final class RecipeText {

    private static final String INDENT = "     ";
    private static final Set<String> HANDLING = Set.of("heaped", "heaping", "rounded", "scant", "generous", "good");

    private final Recipe recipe;
    private final StringBuilder text = new StringBuilder();

    private RecipeText(Recipe recipe) {
        this.recipe = recipe;
    }

    /** The text, ending with a line break. */
    public static String of(Recipe recipe) {
        RecipeText writer = new RecipeText(recipe);
        writer.write();
        return writer.text.toString();
    }

    private void write() {
        text.append(recipe.title()).append('\n');
        recipe.settings().forEach(setting -> text.append(sentence(setting)).append('\n'));
        for (Component component : recipe.components()) {
            text.append('\n').append(Component.heading(component.name())).append('\n');
            TextTable table = new TextTable();
            component.lines().forEach(line -> add(table, line));
            table.writeTo(text, "");
        }
        if (!recipe.steps().isEmpty()) {
            text.append("\nMethod\n");
            recipe.steps().forEach(this::add);
            addTotals();
        }
        if (!recipe.notes().isEmpty()) {
            text.append("\nNotes (lines marked with !)\n");
            recipe.notes().forEach(note -> text.append("  ").append(note).append('\n'));
        }
    }

    private void add(TextTable table, IngredientLine line) {
        List<String> remarks = new ArrayList<>();
        line.alternative().ifPresent(quantity -> remarks.add("or " + QuantityWriter.text(quantity)));
        if (!line.preparation().isEmpty()) {
            remarks.add(line.preparation());
        }
        line.alternatives().forEach(other -> remarks.add("or " + other));
        if (line.optional()) {
            remarks.add("optional");
        }
        table.row(
                mark(line.line()) + (line.line() == 0 ? "" : "line " + line.line()),
                line.quantity().map(RecipeText::number).orElse("–"),
                line.quantity().map(RecipeText::unit).orElse("")
                        + (line.packing().isEmpty() ? "" : " (" + line.packing() + ")"),
                line.ingredient(),
                String.join("; ", remarks));
    }

    private void add(Step step) {
        Wrapped.append(text, mark(step.line()) + step.number() + ". ", INDENT, step.text());
        if (!step.uses().isEmpty()) {
            String uses =
                    String.join(", ", step.uses().stream().map(this::words).toList());
            Wrapped.append(text, INDENT + "uses ", INDENT + "  ", uses);
        }
        step.settings()
                .forEach(
                        setting -> text.append(INDENT).append(sentence(setting)).append('\n'));
        String does = String.join(", ", step.techniques());
        String time = time(step.handsOn(), step.unattended());
        text.append(INDENT).append(does.isEmpty() ? time : does + ": " + time).append('\n');
    }

    private void addTotals() {
        Duration hands = recipe.steps().stream().map(Step::handsOn).reduce(Duration.ZERO, Duration::plus);
        Duration alone = recipe.steps().stream().map(Step::unattended).reduce(Duration.ZERO, Duration::plus);
        text.append("  In all about ").append(time(hands, alone)).append(", one step after the other\n");
    }

    private static String time(Duration hands, Duration alone) {
        return words(hands) + " hands-on" + (alone.isZero() ? "" : ", " + words(alone) + " unattended");
    }

    /** "45 min", "1 h 30 min", "8 h". */
    private static String words(Duration time) {
        String minutes = time.toMinutesPart() == 0 && time.toHours() > 0 ? "" : time.toMinutesPart() + " min";
        return time.toHours() == 0 ? minutes : (time.toHours() + " h " + minutes).strip();
    }

    /** Two signs in front of a line of the file: "! " where a note speaks of it. */
    private String mark(int line) {
        boolean noted = line > 0
                && recipe.notes().stream().anyMatch(note -> note.place().line() == line);
        return noted ? "! " : "  ";
    }

    private String words(Use use) {
        String name = use.in(recipe).ingredient();
        Optional<String> share = use.part().map(QuantityWriter::text);
        String said = use.words();
        if (share.isPresent()) {
            return name + " (" + (said.isEmpty() ? "" : said + ", ") + share.get() + ")";
        }
        return said.isEmpty() ? name : name + " (" + said + ")";
    }

    private static String sentence(Setting setting) {
        String figure = QuantityWriter.text(setting.quantity());
        String fan = setting.fan()
                .map(quantity -> ", fan " + QuantityWriter.text(quantity))
                .orElse("");
        String what = setting.what();
        return switch (setting.kind()) {
            case OVEN_TEMPERATURE -> "oven " + figure + fan + bracketed(setting.also());
            case DURATION -> (what.isEmpty() ? "time" : what) + " " + figure;
            case YIELD -> ("makes " + figure + " " + what).strip() + bracketed(setting.also());
            case PAN -> "tin " + (setting.count() > 1 ? setting.count() + " × " : "") + size(setting) + " " + what;
        };
    }

    /** "20 × 30 cm", or "20 cm (8 in)" where the second figure is the first in another unit. */
    private static String size(Setting tin) {
        Unit unit = tin.quantity().unit();
        List<Quantity> sides = new ArrayList<>(List.of(tin.quantity()));
        List<Quantity> others = new ArrayList<>();
        tin.also().forEach(quantity -> (quantity.unit() == unit ? sides : others).add(quantity));
        List<String> written = new ArrayList<>();
        for (int at = 0; at < sides.size(); at++) {
            boolean last = at == sides.size() - 1;
            written.add(last ? QuantityWriter.text(sides.get(at)) : number(sides.get(at)));
        }
        return String.join(" × ", written)
                + bracketed(others)
                + tin.depth()
                        .map(depth -> ", " + QuantityWriter.text(depth) + " deep,")
                        .orElse("");
    }

    private static String bracketed(List<Quantity> quantities) {
        return quantities.isEmpty()
                ? ""
                : " ("
                        + String.join(
                                ", ",
                                quantities.stream().map(QuantityWriter::text).toList()) + ")";
    }

    private static String number(Quantity quantity) {
        if (quantity.amount() instanceof Amount.Unstated unstated) {
            return unstated.words();
        }
        return QuantityWriter.text(
                new Quantity(handling(quantity).isEmpty() ? quantity.amount() : plain(quantity.amount()), Unit.EACH));
    }

    /** The unit with the handling of a spoon before it: "heaped tsp". */
    private static String unit(Quantity quantity) {
        if (quantity.unit() == Unit.EACH || quantity.amount() instanceof Amount.Unstated) {
            return "";
        }
        return (handling(quantity) + " " + quantity.unit().code()).strip();
    }

    private static String handling(Quantity quantity) {
        return quantity.amount() instanceof Amount.Approximate about && HANDLING.contains(about.hedge())
                ? about.hedge()
                : "";
    }

    private static Amount plain(Amount amount) {
        return amount instanceof Amount.Approximate about ? about.about() : amount;
    }
}
