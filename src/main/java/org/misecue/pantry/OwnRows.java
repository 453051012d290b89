package org.misecue.pantry;

import java.io.InputStream;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.misecue.notice.BadInput;
import org.misecue.notice.Note;

/**
 * Lays a person's own {@code pantry.yaml} over a pantry. A row of a known name changes what it gives and keeps the rest;
 * a name that belonged to another row moves. Allergens are only ever added, those of a row that a name is taken from
 * too, unless the row says {@code replaces: true}; then a note tells which were dropped.
 */
final class OwnRows {

    private static final List<String> KEYS =
            Stream.concat(PantryRow.KEYS.stream(), Stream.of("replaces")).toList();

    private static final String SOURCE = "own pantry";

    private final Pantry before;
    private final NameIndex written = new NameIndex();
    private final Map<String, Ingredient> own = new LinkedHashMap<>();
    private final List<List<String>> taken = new ArrayList<>();
    private final List<Note> notes = new ArrayList<>();

    private OwnRows(Pantry before) {
        this.before = before;
    }

    /**
     * @param file as the person knows it
     * @throws BadInput with file and line at the first bad row
     */
    static Pantry over(Pantry before, String file, InputStream in) {
        OwnRows rows = new OwnRows(before);
        YamlRows.read(file, in, KEYS).forEach(rows::add);
        return rows.pantry();
    }

    private void add(YamlRow yaml) {
        PantryRow row = new PantryRow(yaml);
        Optional<Ingredient> known = before.all().stream()
                .filter(one -> Names.words(one.name()).equals(Names.words(row.name())))
                .findFirst();
        List<Ingredient> takenFrom = new ArrayList<>();
        for (String name : row.allNames()) {
            before.named(name)
                    .filter(other -> !known.equals(Optional.of(other)))
                    .ifPresent(other -> {
                        takenFrom.add(other);
                        note(
                                yaml,
                                "“" + name + "” was a name of “" + other.name() + "” and now means “" + row.name()
                                        + "”");
                    });
        }
        Ingredient ingredient = merged(row, known, takenFrom);
        row.allNames().forEach(name -> {
            PantryFile.claim(name, ingredient, written, yaml);
            taken.add(Names.words(name));
        });
        own.put(ingredient.name(), ingredient);
        if (known.isEmpty() && takenFrom.isEmpty()) {
            tellWhatNoLongerFits(row, ingredient);
        }
    }

    private Ingredient merged(PantryRow row, Optional<Ingredient> known, List<Ingredient> takenFrom) {
        YamlRow yaml = row.row();
        List<Ingredient> earlier =
                Stream.concat(known.stream(), takenFrom.stream()).toList();
        boolean replaces = yaml.yes("replaces");
        Set<Substance> contains = all(row.contains(), replaces, earlier.stream().map(Ingredient::contains));
        Set<Substance> check = all(row.check(), replaces, earlier.stream().map(Ingredient::check));
        if (replaces) {
            tellDropped(row, earlier, contains, check);
        }
        String kind = row.kind().or(() -> known.map(Ingredient::kind)).orElse("other");
        return new Ingredient(
                known.map(Ingredient::name).orElse(row.name()),
                both(known.map(Ingredient::names), row.also()),
                both(known.map(Ingredient::heard), row.heard()),
                kind,
                new Measures(yaml, Optional.of(SOURCE))
                        .over(known.map(Ingredient::weights).orElse(List.of()), Kind.named(kind)),
                contains,
                check,
                row.keep().or(() -> known.map(Ingredient::storage)).orElse(Storage.CUPBOARD),
                yaml.textIfAny("aisle").or(() -> known.map(Ingredient::aisle)).orElse("other"),
                yaml.has("beware")
                        ? row.beware()
                        : known.map(Ingredient::beware).orElse(Map.of()),
                yaml.textIfAny("source").orElse(SOURCE));
    }

    private static List<String> both(Optional<List<String>> before, List<String> own) {
        return Stream.concat(before.stream().flatMap(List::stream), own.stream())
                .distinct()
                .toList();
    }

    private static Set<Substance> all(Set<Substance> own, boolean replaces, Stream<Set<Substance>> before) {
        Set<Substance> all = EnumSet.noneOf(Substance.class);
        all.addAll(own);
        if (!replaces) {
            before.forEach(all::addAll);
        }
        return all;
    }

    private void tellDropped(PantryRow row, List<Ingredient> earlier, Set<Substance> contains, Set<Substance> check) {
        Set<Substance> dropped = EnumSet.noneOf(Substance.class);
        earlier.forEach(one -> {
            dropped.addAll(one.contains());
            dropped.addAll(one.check());
        });
        dropped.removeAll(contains);
        dropped.removeAll(check);
        if (!dropped.isEmpty()) {
            note(
                    row.row(),
                    "“" + row.name() + "” no longer counts " + words(dropped)
                            + ", for the row says “replaces: true”; see that the packet's label says so too");
        }
    }

    /** A new, longer name: "corn crunch flour" was a flour before, with all that a flour carries. */
    private void tellWhatNoLongerFits(PantryRow row, Ingredient ingredient) {
        for (String name : row.allNames()) {
            before.find(name).ifPresent(was -> {
                Set<Substance> lost = EnumSet.noneOf(Substance.class);
                lost.addAll(was.contains());
                lost.removeAll(ingredient.contains());
                lost.removeAll(ingredient.check());
                if (!lost.isEmpty()) {
                    note(
                            row.row(),
                            "“" + name + "” counted as “" + was.name() + "” before, with " + words(lost)
                                    + ", which the own row does not name; add it under “contains” if it is in it");
                }
            });
        }
    }

    private static String words(Set<Substance> substances) {
        return substances.stream().map(Substance::key).collect(Collectors.joining(", "));
    }

    private void note(YamlRow row, String sentence) {
        notes.add(new Note(row.place(), sentence + "."));
    }

    private Pantry pantry() {
        List<Ingredient> rest = before.all().stream()
                .filter(one -> !own.containsKey(one.name()))
                .map(one -> one.named(one.names().stream()
                        .filter(name -> !taken.contains(Names.words(name)))
                        .toList()))
                .toList();
        return before.with(Stream.concat(own.values().stream(), rest.stream()).toList(), notes);
    }
}
