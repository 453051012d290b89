package org.misecue.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.misecue.claims.Claim;
import org.misecue.claims.Ruling;
import org.misecue.narration.Moment;
import org.misecue.pantry.Pantry;
import org.misecue.recipe.Recipe;

/**
 * A comparison in the order in which a producer works through it; the page and the text both follow it. Every written
 * line and setting is in exactly one group, and what is uncertain is never in the one that needs no listening.
 *
 * @param groups those that have findings: what is wrong for sure comes first in its group, of what is to be listened to
 *     the most doubtful, and the rest is in the order of the recipe
 * @param heardOtherwise sentences about words that somebody corrected
 */
public record Findings(String title, List<Group> groups, List<String> heardOtherwise) {

    /** Of a film whose words nobody corrected. */
    public Findings(String title, List<Group> groups) {
        this(title, groups, List.of());
    }

    /** The same, and what was heard where the recogniser wrote something else: it may hide a slip, so it is shown. */
    public Findings withHeardOtherwise(List<String> words) {
        return new Findings(title, groups, List.copyOf(words));
    }

    /** What is to be done about a finding. */
    public enum Kind {
        /** A claim such as "dairy free" that an ingredient contradicts: before all else, for it can hurt somebody. */
        CLAIM("Claims that the ingredients contradict", "claim contradicted", "claims contradicted"),
        DIFFERS("Differs from the recipe", "differs", "differ"),
        ADDED("Added on camera, not in the recipe", "added on camera", "added on camera"),
        UNKNOWABLE("Claims that cannot be known from here", "claim not to be known", "claims not to be known"),
        LISTEN("Listen, look and decide", "to listen to", "to listen to"),
        /** Never worded as a confirmation. */
        UNCONTRADICTED(
                "Claims that nothing known here contradicts, which is no proof",
                "claim not contradicted",
                "claims not contradicted"),
        UNSAID("Never said or shown with an amount: the description must have it", "never said", "never said"),
        AGREES("Said or shown as written", "agrees", "agree");

        private final String heading;
        private final String one;
        private final String many;

        Kind(String heading, String one, String many) {
            this.heading = heading;
            this.one = one;
            this.many = many;
        }

        public String heading() {
            return heading;
        }

        /** The name for anchors. */
        public String id() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }

        /** Whether its findings contradict the recipe, so that nothing may go out before they are decided on. */
        public boolean differs() {
            return this == CLAIM || this == DIFFERS || this == ADDED;
        }

        /** Whether a producer has to decide about each of its findings. */
        public boolean isOpen() {
            return differs() || this == UNKNOWABLE || this == LISTEN;
        }
    }

    /** The findings of one kind. */
    public record Group(Kind kind, List<Finding> findings) {

        /** "3 to listen to". */
        public String summary() {
            return findings.size() + " " + (findings.size() == 1 ? kind.one : kind.many);
        }
    }

    /**
     * @param claims what is claimed of the dish
     * @param recipe the one that was compared, for the steps that use a line
     */
    public static Findings of(Comparison comparison, List<Claim> claims, Recipe recipe, Pantry pantry) {
        Map<Kind, List<Finding>> byKind = new EnumMap<>(Kind.class);
        FindingWriter writer = new FindingWriter(recipe, pantry);
        claims.forEach(claim -> add(byKind, kind(claim.ruling()), writer.of(claim)));
        comparison.written().forEach(line -> add(byKind, kind(line.verdict(), line.confidence()), writer.of(line)));
        comparison.settings().forEach(one -> add(byKind, kind(one.verdict(), one.confidence()), writer.of(one)));
        comparison.unwritten().forEach(added -> add(byKind, Kind.ADDED, writer.of(added)));
        comparison.unplaced().forEach(shown -> add(byKind, Kind.LISTEN, writer.ofUnplaced(shown)));
        List<Group> groups = byKind.entrySet().stream()
                .map(entry -> new Group(entry.getKey(), sorted(entry.getKey(), entry.getValue())))
                .toList();
        return new Findings(comparison.title(), groups);
    }

    private static void add(Map<Kind, List<Finding>> byKind, Kind kind, Finding finding) {
        byKind.computeIfAbsent(kind, any -> new ArrayList<>()).add(finding);
    }

    private static Kind kind(Ruling ruling) {
        return switch (ruling) {
            case CONTRADICTED -> Kind.CLAIM;
            case UNKNOWABLE -> Kind.UNKNOWABLE;
            case NOT_CONTRADICTED -> Kind.UNCONTRADICTED;
        };
    }

    /** What differs stays on top however uncertain it is; of the rest, what is uncertain is to be listened to. */
    private static Kind kind(Verdict verdict, Confidence confidence) {
        return switch (verdict) {
            case DIFFERS -> Kind.DIFFERS;
            case APPROXIMATE -> Kind.LISTEN;
            case UNSPOKEN -> confidence.isLow() ? Kind.LISTEN : Kind.UNSAID;
            case AGREES -> confidence.isLow() ? Kind.LISTEN : Kind.AGREES;
        };
    }

    /** Those of equal doubt stay in the order of the recipe. */
    private static List<Finding> sorted(Kind kind, List<Finding> findings) {
        Comparator<Finding> byDoubt = Comparator.comparing(Finding::confidence);
        return switch (kind) {
            case DIFFERS, ADDED -> findings.stream().sorted(byDoubt.reversed()).toList();
            case LISTEN -> findings.stream().sorted(byDoubt).toList();
            case CLAIM, UNKNOWABLE, UNCONTRADICTED, UNSAID, AGREES -> List.copyOf(findings);
        };
    }

    /** "1 differs, 3 to listen to, 12 agree". */
    public String summary() {
        return groups.stream().map(Group::summary).collect(Collectors.joining(", "));
    }

    /**
     * "2 of 5 are undecided"; empty where nothing is to be decided.
     *
     * @param decided what was decided on
     */
    Optional<String> undecided(Set<String> decided) {
        List<Finding> open = groups.stream()
                .filter(group -> group.kind().isOpen())
                .flatMap(group -> group.findings().stream())
                .toList();
        long left = open.stream().filter(one -> !decided.contains(one.about())).count();
        return open.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        left == 0 ? "All " + open.size() + " are decided" : left + " of " + open.size() + " undecided");
    }

    /** By what allergens are told, and what that leaves open. */
    public static final String ALLERGENS = AllergenCaution.SOURCE;

    /** The same where allergens are told; empty where none are. */
    public String source() {
        boolean told = groups.stream()
                .flatMap(group -> group.findings().stream())
                .anyMatch(finding -> !finding.caution().isEmpty());
        return told ? ALLERGENS : "";
    }

    /** The moments that somebody has to see and hear, each once. */
    public Set<Moment> openMoments() {
        Stream<Finding> open =
                groups.stream().filter(group -> group.kind().isOpen()).flatMap(group -> group.findings().stream());
        return open.flatMap(finding -> finding.evidence().stream())
                .map(Evidence::moment)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }
}
