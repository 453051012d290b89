package org.misecue.day;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.UncheckedIOException;
import java.time.LocalDateTime;
import java.util.Locale;

/**
 * The day as the JSON document of {@code day --json}: times as ISO local times, with “day” beside them (−1 for the day
 * before) where they are not on that of the first shot. Keys may be added to it, never changed.
 */
public final class DayJson {

    private static final ObjectMapper MAPPER = new ObjectMapper();

    private DayJson() {}

    /** Indented, with a line end at the end. */
    public static String of(DayPlan plan) {
        ObjectNode root = MAPPER.createObjectNode();
        root.put("title", plan.title());
        root.put("date", plan.dated() ? plan.firstShot().toLocalDate().toString() : null);
        ArrayNode tasks = root.putArray("tasks");
        plan.entries().forEach(entry -> write(entry, tasks.addObject(), plan));
        root.put("begin", time(plan.begin()));
        root.put("firstShot", time(plan.firstShot()));
        root.put("end", time(plan.end()));
        root.put("proved", plan.proved());
        root.put("naiveEnd", plan.naiveEnd().map(DayJson::time).orElse(null));
        root.put("savedMinutes", plan.saved().toMinutes());
        root.put("setUpChanges", plan.changes());
        root.put("presenterIdleMinutes", plan.idle().toMinutes());
        ArrayNode standIns = root.putArray("standIns");
        plan.standIns().forEach(standIn -> standIns.addObject()
                .put("step", standIn.step())
                .put("savesMinutes", standIn.saves().toMinutes()));
        root.put("promisedEnd", plan.promised().map(DayJson::time).orElse(null));
        ArrayNode slips = root.putArray("slips");
        plan.slips().forEach(slip -> slips.addObject()
                .put("id", slip.id())
                .put("what", slip.what())
                .put("was", time(slip.was()))
                .put("is", time(slip.is())));
        ArrayNode notes = root.putArray("notes");
        plan.notes().forEach(note -> notes.add(note.toString()));
        try {
            return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void write(Entry entry, ObjectNode out, DayPlan plan) {
        out.put("id", entry.id());
        out.put("what", entry.what());
        out.put("step", entry.step());
        out.put("start", time(entry.start()));
        out.put("end", time(entry.end()));
        if (plan.isOtherDay(entry.start())) {
            out.put("day", DayWords.daysOff(entry.start(), plan));
        }
        ArrayNode who = out.putArray("who");
        entry.who().forEach(who::add);
        ArrayNode with = out.putArray("with");
        entry.with().forEach(with::add);
        out.put("kind", entry.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        ArrayNode shots = out.putArray("shots");
        entry.shots().forEach(shots::add);
        out.put("setUp", entry.setUp());
        out.put("critical", entry.critical());
        out.put("done", entry.done());
    }

    private static String time(LocalDateTime time) {
        return time.toLocalTime().toString();
    }
}
