package org.misecue.worktop;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.misecue.day.DayPlan;
import org.misecue.day.DayPlanner;
import org.misecue.day.DaySettings;
import org.misecue.day.Entry;
import org.misecue.day.Standing;
import org.misecue.episode.EpisodeSettings;
import org.misecue.episode.FilmingDay;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;

/** Plans an episode's day from its settings, and keeps the plan, so that a late day can be held against it. */
public final class FilmingDays {

    private static final String KEPT = "day.json";
    private static final String FIRST = "first";
    private static final String LAST = "last";
    private static final String END = "end";
    private static final String OVENS = "ovens";
    private static final String PLAN = "plan";
    private static final String MADE_FROM = "madeFrom";
    private static final ObjectMapper MAPPER = new ObjectMapper();

    /** Where no day is named. */
    private static final LocalDateTime SOME_MORNING = LocalDate.EPOCH.atTime(9, 0);

    private final Worktop worktop;
    private final Consumer<String> progress;
    private Optional<String> madeFrom = Optional.empty();

    public FilmingDays(Worktop worktop, Consumer<String> progress) {
        this.worktop = worktop;
        this.progress = progress;
    }

    /**
     * A plan that was kept.
     *
     * @param fresh whether it was made from the recipe and the settings as they are now
     */
    public record Kept(DayPlan plan, boolean fresh) {}

    public DayPlan plan() {
        return planner().plan();
    }

    public DayPlan replan(Standing standing) {
        return planner().replan(standing);
    }

    private DayPlanner planner() {
        // now, and not when it is kept: planning lasts, and somebody may mend the recipe meanwhile
        madeFrom = Optional.of(MadeFrom.mark(worktop));
        return new DayPlanner(worktop.recipe(), worktop.prep(), worktop.shots(), settings(), progress);
    }

    /**
     * How far the day has come, held against the plans that were kept.
     *
     * @param now a time of the day of the first shot
     * @throws BadInput if a row is named that the plan does not have
     */
    public Standing standing(LocalTime now, Set<Integer> done) {
        return standing(settings().firstShot().toLocalDate().atTime(now), done);
    }

    /**
     * The same at any hour, after midnight too.
     *
     * @throws BadInput if a row is named that the plan does not have
     */
    public Standing standing(LocalDateTime now, Set<Integer> done) {
        Path file = worktop.episode().state().path(KEPT);
        if (!Files.exists(file)) {
            keep(plan());
        }
        JsonNode root = read(file);
        Map<Integer, LocalDateTime> planned = rows(root.path(LAST));
        for (int row : done) {
            if (!planned.containsKey(row)) {
                throw new BadInput(
                        Place.of("--done"),
                        "the plan has no row " + row + "; look the numbers up on the call sheet (misecue day).");
            }
        }
        return new Standing(
                now, done, planned, ovens(root.path(OVENS)), rows(root.path(FIRST)), promisedEnd(root.path(END)));
    }

    /**
     * The plan that was made last; empty where none was kept.
     *
     * @throws BadInput if what was kept is damaged
     */
    public Optional<Kept> kept() {
        Path file = worktop.episode().state().path(KEPT);
        if (!Files.exists(file)) {
            return Optional.empty();
        }
        JsonNode root = read(file);
        if (!root.has(PLAN)) {
            return Optional.empty();
        }
        try {
            boolean fresh = root.path(MADE_FROM).asText().equals(MadeFrom.mark(worktop));
            return Optional.of(new Kept(KeptPlan.read(root.path(PLAN)), fresh));
        } catch (IllegalArgumentException | DateTimeException e) {
            throw damaged(e);
        }
    }

    /** Keeps a plan made before the day as what was promised, too. */
    public void keep(DayPlan plan) {
        ObjectNode root = MAPPER.createObjectNode();
        root.set(FIRST, beginnings(plan));
        root.set(LAST, beginnings(plan));
        root.set(OVENS, ovens(plan));
        root.put(END, plan.end().toString());
        write(root, plan);
    }

    /** Keeps a plan of a late day beside what was promised. */
    public void keepLate(DayPlan plan) {
        ObjectNode root = MAPPER.createObjectNode();
        JsonNode kept = read(worktop.episode().state().path(KEPT));
        root.set(FIRST, kept.path(FIRST));
        root.set(END, kept.path(END));
        root.set(LAST, beginnings(plan));
        root.set(OVENS, ovens(plan));
        write(root, plan);
    }

    private static ObjectNode beginnings(DayPlan plan) {
        ObjectNode rows = MAPPER.createObjectNode();
        plan.entries()
                .forEach(entry ->
                        rows.put(String.valueOf(entry.id()), entry.start().toString()));
        return rows;
    }

    /** Which oven each bake stands in, so that what bakes stays where it is when the day is planned again. */
    private static ObjectNode ovens(DayPlan plan) {
        ObjectNode rows = MAPPER.createObjectNode();
        plan.entries().stream()
                .filter(entry -> entry.kind() == Entry.Kind.WAIT && entry.oven().isPresent())
                .forEach(entry ->
                        rows.put(String.valueOf(entry.id()), entry.oven().getAsInt()));
        return rows;
    }

    private Map<Integer, Integer> ovens(JsonNode rows) {
        Map<Integer, Integer> ovens = new HashMap<>();
        try {
            for (Map.Entry<String, JsonNode> row : rows.properties()) {
                int oven = row.getValue().asInt(-1);
                if (oven < 0 || oven >= settings().ovens()) {
                    throw damaged(new IllegalArgumentException("oven " + row.getValue()));
                }
                ovens.put(Integer.parseInt(row.getKey()), oven);
            }
        } catch (NumberFormatException e) {
            throw damaged(e);
        }
        return ovens;
    }

    private JsonNode read(Path file) {
        try {
            JsonNode root = MAPPER.readTree(Files.readAllBytes(file));
            if (!root.isObject()) {
                throw damaged(new IllegalArgumentException(root.getNodeType() + " in place of an object"));
            }
            return root;
        } catch (JsonProcessingException e) {
            throw damaged(e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Optional<LocalDateTime> promisedEnd(JsonNode end) {
        try {
            return end.isTextual() ? Optional.of(LocalDateTime.parse(end.asText())) : Optional.empty();
        } catch (DateTimeException e) {
            throw damaged(e);
        }
    }

    private Map<Integer, LocalDateTime> rows(JsonNode rows) {
        Map<Integer, LocalDateTime> planned = new HashMap<>();
        try {
            for (Map.Entry<String, JsonNode> row : rows.properties()) {
                planned.put(
                        Integer.parseInt(row.getKey()),
                        LocalDateTime.parse(row.getValue().asText()));
            }
        } catch (DateTimeException | NumberFormatException e) {
            throw damaged(e);
        }
        return planned;
    }

    private BadInput damaged(Exception e) {
        return new BadInput(
                Place.of(worktop.episode().state().name(KEPT)),
                "the kept plan is damaged; delete the file and plan the day anew.",
                e);
    }

    private void write(ObjectNode root, DayPlan plan) {
        root.put(MADE_FROM, madeFrom.orElseGet(() -> MadeFrom.mark(worktop)));
        root.set(PLAN, KeptPlan.write(plan));
        try {
            byte[] bytes = (MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n").getBytes(UTF_8);
            worktop.episode().state().write(KEPT, bytes);
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }

    private DaySettings settings() {
        EpisodeSettings episode = worktop.settings();
        FilmingDay day = episode.day();
        return new DaySettings(
                day.presenters(),
                day.cameras(),
                episode.kitchen().ovens(),
                day.shelves(),
                day.rings(),
                day.standMixer(),
                episode.firstShot().orElse(SOME_MORNING),
                episode.firstShot().isPresent(),
                day.end(),
                day.lineUp(),
                day.setUp(),
                day.breaks().stream()
                        .map(pause -> new DaySettings.Break(pause.from(), pause.to(), pause.minutes()))
                        .toList(),
                day.daylight().map(light -> new DaySettings.Daylight(light.from(), light.to(), light.setUps())),
                day.appointments().stream().map(FilmingDays::appointment).toList(),
                episode.standby().madeEarlier(),
                day.after());
    }

    private static DaySettings.Appointment appointment(FilmingDay.Appointment appointment) {
        return appointment.shot() > 0
                ? new DaySettings.Appointment.OfShot(appointment.at(), appointment.shot())
                : new DaySettings.Appointment.Away(
                        appointment.at(), appointment.minutes(), appointment.who(), appointment.what());
    }
}
