package org.misecue.worktop;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.misecue.day.DayPlan;
import org.misecue.day.Entry;
import org.misecue.notice.Note;
import org.misecue.notice.Place;

/** A whole plan of a day as it is kept, so that it can be shown again without planning; nobody else reads this form. */
final class KeptPlan {

    private static final ObjectMapper MAPPER = new ObjectMapper();

    private KeptPlan() {}

    static ObjectNode write(DayPlan plan) {
        ObjectNode out = MAPPER.createObjectNode();
        out.put("title", plan.title()).put("dated", plan.dated());
        plan.entries().forEach(entry -> write(entry, out.withArray("entries").addObject()));
        out.put("begin", plan.begin().toString());
        out.put("firstShot", plan.firstShot().toString());
        out.put("end", plan.end().toString());
        out.put("proved", plan.proved());
        plan.naiveEnd().ifPresent(end -> out.put("naiveEnd", end.toString()));
        out.put("changes", plan.changes()).put("idle", plan.idle().toString());
        plan.standIns().forEach(one -> out.withArray("standIns")
                .addObject()
                .put("step", one.step())
                .put("saves", one.saves().toString()));
        plan.promised().ifPresent(end -> out.put("promised", end.toString()));
        plan.slips().forEach(slip -> out.withArray("slips")
                .addObject()
                .put("id", slip.id())
                .put("what", slip.what())
                .put("was", slip.was().toString())
                .put("is", slip.is().toString()));
        plan.notes().forEach(note -> out.withArray("notes")
                .addObject()
                .put("file", note.place().file())
                .put("line", note.place().line())
                .put("column", note.place().column())
                .put("sentence", note.sentence()));
        return out;
    }

    private static void write(Entry entry, ObjectNode out) {
        out.put("id", entry.id()).put("kind", entry.kind().name()).put("what", entry.what());
        out.put("step", entry.step());
        out.put("start", entry.start().toString()).put("end", entry.end().toString());
        texts(out.putArray("who"), entry.who());
        texts(out.putArray("with"), entry.with());
        ArrayNode shots = out.putArray("shots");
        entry.shots().forEach(shots::add);
        out.put("setUp", entry.setUp());
        out.put("critical", entry.critical()).put("done", entry.done());
    }

    private static void texts(ArrayNode out, Collection<String> texts) {
        texts.forEach(out::add);
    }

    /** @throws RuntimeException of many kinds if this is not what was written */
    static DayPlan read(JsonNode in) {
        return new DayPlan(
                in.required("title").asText(),
                in.required("dated").asBoolean(),
                list(in.path("entries"), KeptPlan::entry),
                time(in, "begin"),
                time(in, "firstShot"),
                time(in, "end"),
                in.required("proved").asBoolean(),
                maybe(in, "naiveEnd"),
                in.required("changes").asInt(),
                Duration.parse(in.required("idle").asText()),
                list(
                        in.path("standIns"),
                        one -> new DayPlan.StandIn(
                                one.required("step").asInt(),
                                Duration.parse(one.required("saves").asText()))),
                maybe(in, "promised"),
                list(
                        in.path("slips"),
                        slip -> new DayPlan.Slip(
                                slip.required("id").asInt(),
                                slip.required("what").asText(),
                                time(slip, "was"),
                                time(slip, "is"))),
                list(
                        in.path("notes"),
                        note -> new Note(
                                new Place(
                                        note.required("file").asText(),
                                        note.required("line").asInt(),
                                        note.required("column").asInt()),
                                note.required("sentence").asText())));
    }

    private static Entry entry(JsonNode in) {
        return new Entry(
                in.required("id").asInt(),
                Entry.Kind.valueOf(in.required("kind").asText()),
                in.required("what").asText(),
                in.required("step").asInt(),
                time(in, "start"),
                time(in, "end"),
                list(in.required("who"), JsonNode::asText),
                list(in.required("with"), JsonNode::asText),
                list(in.required("shots"), JsonNode::asInt),
                in.required("setUp").asText(),
                in.required("critical").asBoolean(),
                in.required("done").asBoolean());
    }

    private static <T> List<T> list(JsonNode array, Function<JsonNode, T> item) {
        List<T> items = new ArrayList<>();
        array.forEach(node -> items.add(item.apply(node)));
        return List.copyOf(items);
    }

    private static LocalDateTime time(JsonNode in, String key) {
        return LocalDateTime.parse(in.required(key).asText());
    }

    private static Optional<LocalDateTime> maybe(JsonNode in, String key) {
        return in.has(key) ? Optional.of(time(in, key)) : Optional.empty();
    }
}
