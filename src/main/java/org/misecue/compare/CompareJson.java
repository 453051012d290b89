package org.misecue.compare;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.misecue.claims.Claim;
import org.misecue.narration.Moment;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import tech.units.indriya.function.RationalNumber;

/** The {@code compare --json} document, which other programs read. Times are in seconds. */
public final class CompareJson {

    private CompareJson() {}

    /** Of a film whose words nobody corrected. */
    public static String of(Comparison comparison, List<Claim> claims) {
        return of(comparison, claims, List.of());
    }

    /**
     * @param claims what is claimed of the dish
     * @param heardOtherwise sentences about words that somebody corrected
     */
    public static String of(Comparison comparison, List<Claim> claims, List<String> heardOtherwise) {
        StringWriter out = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
            json.setPrettyPrinter(new DefaultPrettyPrinter());
            json.writeStartObject();
            json.writeStringField("title", comparison.title());
            json.writeNumberField("factor", Rationals.decimal(comparison.factor()));
            written(json, comparison.written());
            settings(json, comparison.settings());
            unwritten(json, comparison.unwritten());
            json.writeFieldName("unplaced");
            evidenceList(json, comparison.unplaced());
            claims(json, claims);
            sentences(json, "heardOtherwise", heardOtherwise);
            json.writeEndObject();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out + "\n";
    }

    private static void written(JsonGenerator json, List<LineVerdict> lines) throws IOException {
        json.writeArrayFieldStart("written");
        for (LineVerdict line : lines) {
            json.writeStartObject();
            json.writeStringField("component", line.component());
            json.writeStringField("ingredient", line.line().ingredient());
            if (line.line().quantity().isPresent()) {
                amounts(json, line.line().quantity().get());
            }
            verdict(json, line.verdict(), line.confidence(), line.reason(), line.evidence());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void settings(JsonGenerator json, List<SettingVerdict> settings) throws IOException {
        json.writeArrayFieldStart("settings");
        for (SettingVerdict setting : settings) {
            json.writeStartObject();
            json.writeStringField("kind", setting.setting().kind().code());
            json.writeNumberField("step", setting.setting().step());
            amounts(json, setting.setting().quantity());
            verdict(json, setting.verdict(), setting.confidence(), setting.reason(), setting.evidence());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void unwritten(JsonGenerator json, List<Unwritten> all) throws IOException {
        json.writeArrayFieldStart("unwritten");
        for (Unwritten unwritten : all) {
            json.writeStartObject();
            json.writeStringField("ingredient", unwritten.ingredient());
            amount(json, unwritten.quantity());
            confidence(json, unwritten.confidence());
            evidence(json, unwritten.evidence());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void claims(JsonGenerator json, List<Claim> all) throws IOException {
        json.writeArrayFieldStart("claims");
        for (Claim claim : all) {
            json.writeStartObject();
            json.writeStringField("claim", claim.words());
            json.writeStringField("about", claim.about().words());
            json.writeStringField("via", claim.via().name().toLowerCase(Locale.ROOT));
            json.writeStringField("ruling", claim.ruling().code());
            json.writeStringField("reason", claim.reason());
            json.writeStringField("where", claim.place().toString());
            if (claim.moment().isPresent()) {
                json.writeNumberField("at", seconds(claim.moment().get()));
            }
            json.writeStringField("quote", claim.quote());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void verdict(
            JsonGenerator json, Verdict verdict, Confidence confidence, String reason, List<Evidence> evidence)
            throws IOException {
        json.writeStringField("verdict", verdict.code());
        confidence(json, confidence);
        json.writeStringField("reason", reason);
        evidence(json, evidence);
    }

    private static void confidence(JsonGenerator json, Confidence confidence) throws IOException {
        json.writeNumberField("confidence", BigDecimal.valueOf(confidence.percent(), 2));
    }

    private static void evidence(JsonGenerator json, List<Evidence> all) throws IOException {
        json.writeFieldName("evidence");
        evidenceList(json, all);
    }

    private static void evidenceList(JsonGenerator json, List<Evidence> all) throws IOException {
        json.writeStartArray();
        for (Evidence evidence : all) {
            json.writeStartObject();
            evidenceFields(json, evidence);
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    static void evidenceFields(JsonGenerator json, Evidence evidence) throws IOException {
        json.writeStringField("via", evidence.via().code());
        json.writeStringField("source", evidence.moment().source());
        json.writeNumberField("at", seconds(evidence.moment()));
        if (evidence.quantity().isPresent()) {
            amount(json, evidence.quantity().get());
        }
        json.writeStringField("quote", evidence.quote());
        if (evidence.doubtful()) {
            json.writeBooleanField("doubtful", true);
        }
    }

    private static void amounts(JsonGenerator json, Quantity quantity) throws IOException {
        Optional<RationalNumber> most = quantity.amount()
                .most()
                .filter(value -> !quantity.amount().least().equals(Optional.of(value)));
        number(json, "amount", quantity.amount().least());
        number(json, "amountMax", most);
        json.writeStringField("unit", quantity.unit().code());
    }

    private static void amount(JsonGenerator json, Quantity quantity) throws IOException {
        number(json, "amount", quantity.amount().least());
        json.writeStringField("unit", quantity.unit().code());
    }

    private static void number(JsonGenerator json, String name, Optional<RationalNumber> value) throws IOException {
        if (value.isPresent()) {
            json.writeNumberField(name, Rationals.decimal(value.get()));
        } else {
            json.writeNullField(name);
        }
    }

    private static BigDecimal seconds(Moment moment) {
        return BigDecimal.valueOf(moment.at().toMillis(), 3)
                .setScale(1, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .setScale(1);
    }

    static void sentences(JsonGenerator json, String name, List<String> sentences) throws IOException {
        json.writeArrayFieldStart(name);
        for (String sentence : sentences) {
            json.writeString(sentence);
        }
        json.writeEndArray();
    }
}
