package org.misecue.recipe;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.misecue.pantry.Pantry;
import org.misecue.quantity.QuantityWriter;
import org.misecue.recipe.manuscript.Line;

/** The sentences of method/*.csv with their truth: odd rows to build for, even rows to measure with. */
final class MethodSentences {

    /** One sentence. Lists are sorted, so that the order of the words does not matter. */
    record Row(
            int number, String list, String sentence, String uses, String settings, String techniques, String minutes) {

        @Override
        public String toString() {
            return number + " " + sentence;
        }

        /** What was understood, in the form of the truth. */
        Row understood() {
            Recipe recipe = new Recipe("", LISTS.getOrDefault(list, List.of()), List.of(), List.of(), List.of(), "");
            Larder larder = new Larder(Pantry.standard());
            UseFinder finder = new UseFinder(recipe.components(), larder);
            List<Step> steps = new ArrayList<>();
            for (String text : sentence.split(">>", -1)) {
                Outline.MethodLine line =
                        new Outline.MethodLine("", new Line(1, Line.Kind.NUMBERED, 0, text.strip(), false));
                steps.add(StepParser.parse(steps.size() + 1, line, finder, List.of(), larder));
            }
            Step step = steps.get(steps.size() - 1);
            boolean stated = !minutes.endsWith("-");
            return new Row(
                    number,
                    list,
                    sentence,
                    sorted(step.uses().stream().map(use -> shown(use, recipe))),
                    sorted(step.settings().stream().map(SettingsTest::shown)),
                    sorted(step.techniques().stream()),
                    whole(step.unattended()) + "|" + (stated ? whole(step.handsOn()) : "-"));
        }
    }

    private static final Map<String, List<Component>> LISTS = lists();

    private MethodSentences() {}

    /** @param file without folder and ending: "sentences" or "more-sentences" */
    static Stream<Row> odd(String file) {
        return rows(file).filter(row -> row.number % 2 == 1);
    }

    static Stream<Row> even(String file) {
        return rows(file).filter(row -> row.number % 2 == 0);
    }

    private static Stream<Row> rows(String file) {
        List<Row> rows = new ArrayList<>();
        for (String line : lines("method/" + file + ".csv")) {
            String[] cells = line.split("\\|", -1);
            rows.add(new Row(
                    rows.size() + 1,
                    cells[0],
                    cells[1],
                    sorted(Stream.of(cells[2].split(";", -1))),
                    sorted(Stream.of(cells[3].split(";", -1))),
                    sorted(Stream.of(cells[4].split(";", -1))),
                    cells[5] + "|" + cells[6]));
        }
        return rows.stream();
    }

    private static String shown(Use use, Recipe recipe) {
        String share = use.part().map(QuantityWriter::text).orElse(use.words());
        String name = use.in(recipe).ingredient();
        return share.isEmpty() ? name : name + " = " + share;
    }

    private static String sorted(Stream<String> each) {
        return each.map(String::strip).sorted().collect(Collectors.joining("; "));
    }

    private static String whole(Duration duration) {
        return Long.toString(duration.toMinutes());
    }

    private static Map<String, List<Component>> lists() {
        Map<String, List<Component>> lists = new HashMap<>();
        for (String line : lines("method/lists.txt")) {
            String[] cells = line.split("\\|", -1);
            lists.put(cells[0].strip(), parts(List.of(cells).subList(1, cells.length)));
        }
        return lists;
    }

    private static List<Component> parts(List<String> cells) {
        IngredientLineParser parser = new IngredientLineParser(Pantry.standard());
        List<Component> parts = new ArrayList<>();
        String name = "";
        List<IngredientLine> lines = new ArrayList<>();
        for (String cell : cells) {
            if (cell.strip().startsWith("[")) {
                parts.add(new Component(name, List.copyOf(lines)));
                name = cell.strip().replaceAll("(?i)^\\[(?:for the )?|\\]$", "").toLowerCase(Locale.ROOT);
                lines.clear();
            } else {
                lines.add(parser.parse(new Line(1, Line.Kind.ITEM, 0, cell.strip(), false)));
            }
        }
        parts.add(new Component(name, List.copyOf(lines)));
        return List.copyOf(parts);
    }

    private static List<String> lines(String name) {
        try (InputStream in = Objects.requireNonNull(MethodSentences.class.getResourceAsStream(name))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
