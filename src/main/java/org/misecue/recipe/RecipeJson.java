package org.misecue.recipe;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import org.misecue.notice.Note;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;

/** The document of {@code read --json}: how a recipe was understood. Keys may be added, never changed. */
public final class RecipeJson {

    private final Recipe recipe;
    private final JsonGenerator json;

    private RecipeJson(Recipe recipe, JsonGenerator json) {
        this.recipe = recipe;
        this.json = json;
    }

    /** The recipe as JSON, ending with a line break. */
    public static String of(Recipe recipe) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
            json.setPrettyPrinter(new DefaultPrettyPrinter()
                    .withObjectIndenter(new com.fasterxml.jackson.core.util.DefaultIndenter("  ", "\n")));
            new RecipeJson(recipe, json).write();
        } catch (IOException e) {
            throw new UncheckedIOException("writing to memory failed", e);
        }
        return text + "\n";
    }

    private void write() throws IOException {
        json.writeStartObject();
        json.writeStringField("title", recipe.title());
        Optional<Setting> yield = recipe.settings().stream()
                .filter(setting -> setting.kind() == Setting.Kind.YIELD)
                .findFirst();
        json.writeFieldName("yield");
        if (yield.isPresent()) {
            json.writeStartObject();
            amount(Optional.of(yield.get().quantity()));
            json.writeStringField("what", yield.get().what());
            json.writeEndObject();
        } else {
            json.writeNull();
        }
        components();
        settings(recipe.settings());
        steps();
        notes();
        json.writeEndObject();
    }

    private void components() throws IOException {
        json.writeArrayFieldStart("components");
        for (Component component : recipe.components()) {
            json.writeStartObject();
            json.writeStringField("name", component.name());
            json.writeArrayFieldStart("lines");
            for (IngredientLine line : component.lines()) {
                line(line);
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void line(IngredientLine line) throws IOException {
        json.writeStartObject();
        json.writeStringField("text", line.text());
        json.writeNumberField("line", line.line());
        amount(line.quantity());
        quantityField("alternative", line.alternative());
        json.writeStringField("packing", line.packing());
        json.writeStringField("ingredient", line.ingredient());
        json.writeStringField("preparation", line.preparation());
        json.writeBooleanField("optional", line.optional());
        strings("alternatives", line.alternatives());
        json.writeEndObject();
    }

    private void steps() throws IOException {
        json.writeArrayFieldStart("steps");
        for (Step step : recipe.steps()) {
            json.writeStartObject();
            json.writeNumberField("number", step.number());
            json.writeStringField("text", step.text());
            json.writeNumberField("line", step.line());
            json.writeArrayFieldStart("uses");
            for (Use use : step.uses()) {
                use(use);
            }
            json.writeEndArray();
            settings(step.settings());
            strings("techniques", step.techniques());
            json.writeStringField("handsOn", step.handsOn().toString());
            json.writeStringField("unattended", step.unattended().toString());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void use(Use use) throws IOException {
        json.writeStartObject();
        json.writeStringField(
                "component", recipe.components().get(use.component()).name());
        json.writeStringField("ingredient", use.in(recipe).ingredient());
        amount(use.part());
        json.writeStringField("words", use.words());
        json.writeEndObject();
    }

    private void settings(List<Setting> settings) throws IOException {
        json.writeArrayFieldStart("settings");
        for (Setting setting : settings) {
            json.writeStartObject();
            json.writeStringField("kind", setting.kind().code());
            amount(Optional.of(setting.quantity()));
            quantityField("fan", setting.fan());
            json.writeArrayFieldStart("also");
            for (Quantity also : setting.also()) {
                json.writeStartObject();
                amount(Optional.of(also));
                json.writeEndObject();
            }
            json.writeEndArray();
            quantityField("depth", setting.depth());
            json.writeStringField("what", setting.what());
            json.writeNumberField("count", setting.count());
            json.writeNumberField("line", setting.line());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void notes() throws IOException {
        json.writeArrayFieldStart("notes");
        for (Note note : recipe.notes()) {
            json.writeStartObject();
            json.writeNumberField("line", note.place().line());
            json.writeStringField("note", note.sentence());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void quantityField(String name, Optional<Quantity> quantity) throws IOException {
        json.writeFieldName(name);
        if (quantity.isEmpty()) {
            json.writeNull();
            return;
        }
        json.writeStartObject();
        amount(quantity);
        json.writeEndObject();
    }

    /** amount, amountMax and unit; amountMax only of a range, all null where nothing is stated. */
    private void amount(Optional<Quantity> quantity) throws IOException {
        var least = quantity.flatMap(each -> each.amount().least());
        var most = quantity.flatMap(each -> each.amount().most())
                .filter(value -> !Optional.of(value).equals(least));
        number("amount", least.map(Rationals::decimal));
        number("amountMax", most.map(Rationals::decimal));
        if (quantity.isPresent()) {
            json.writeStringField("unit", quantity.get().unit().code());
        } else {
            json.writeNullField("unit");
        }
    }

    private void number(String name, Optional<java.math.BigDecimal> value) throws IOException {
        if (value.isPresent()) {
            json.writeNumberField(name, value.get());
        } else {
            json.writeNullField(name);
        }
    }

    private void strings(String name, List<String> values) throws IOException {
        json.writeArrayFieldStart(name);
        for (String value : values) {
            json.writeString(value);
        }
        json.writeEndArray();
    }
}
