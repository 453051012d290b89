package org.misecue.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.misecue.compare.Findings.Group;
import org.misecue.compare.Findings.Kind;
import org.misecue.pantry.Pantry;
import org.misecue.quantity.Rationals;

class FindingsTest {

    private static final Findings FINDINGS =
            Findings.of(PearBuns.comparison(), List.of(), PearBuns.recipe(), Pantry.standard());

    private static List<Finding> all() {
        return FINDINGS.groups().stream()
                .flatMap(group -> group.findings().stream())
                .toList();
    }

    private static List<String> of(Kind kind) {
        return FINDINGS.groups().stream()
                .filter(group -> group.kind() == kind)
                .flatMap(group -> group.findings().stream())
                .map(Finding::what)
                .toList();
    }

    private static String caution(String what) {
        return all().stream()
                .filter(finding -> finding.what().equals(what))
                .findFirst()
                .orElseThrow()
                .caution();
    }

    @Test
    void the_groups_come_in_the_order_of_the_work() {
        assertThat(FINDINGS.groups())
                .extracting(Group::kind)
                .containsExactly(Kind.DIFFERS, Kind.ADDED, Kind.LISTEN, Kind.UNSAID, Kind.AGREES);
        assertThat(FINDINGS.summary()).isEqualTo("3 differ, 2 added on camera, 4 to listen to, 1 never said, 2 agree");
    }

    @Test
    void nothing_is_lost_and_nothing_is_there_twice() {
        List<String> written = Stream.concat(PearBuns.DOUGH.stream(), PearBuns.TOP.stream())
                .map(line -> line.text())
                .toList();
        assertThat(all())
                .extracting(Finding::what)
                .containsAll(written)
                .contains("Oven: 200 °C", "Bake: 25 minutes", "1 tsp rose paste", "2 tbsp sesame seeds")
                .hasSize(written.size() + 4)
                .doesNotHaveDuplicates();
        assertThat(all()).extracting(Finding::id).doesNotHaveDuplicates();
    }

    @Test
    void the_most_doubtful_comes_first_in_what_is_to_be_listened_to() {
        assertThat(of(Kind.LISTEN)).containsExactly("2 tbsp honey", "3 pears", "2 tsp \"<b>\" spice", "50 g walnuts");
    }

    @Test
    void what_is_surely_wrong_comes_first_in_what_differs() {
        assertThat(of(Kind.DIFFERS))
                .containsExactly("60 g butter, soft", "Bake: 25 minutes", "250 ml milk & a drop more");
        assertThat(of(Kind.ADDED)).containsExactly("2 tbsp sesame seeds", "1 tsp rose paste");
    }

    @Test
    void the_rest_stays_in_the_order_of_the_recipe() {
        assertThat(of(Kind.UNSAID)).containsExactly("1 tsp fine salt");
        assertThat(of(Kind.AGREES)).containsExactly("400 g spelt flour", "Oven: 200 °C");
    }

    @ParameterizedTest(name = "{0} at {1} %: {2}")
    @CsvSource({
        "AGREES, 100, AGREES",
        "AGREES, 59, LISTEN",
        "APPROXIMATE, 100, LISTEN",
        "APPROXIMATE, 5, LISTEN",
        "UNSPOKEN, 90, UNSAID",
        "UNSPOKEN, 50, LISTEN",
        "DIFFERS, 100, DIFFERS",
        "DIFFERS, 5, DIFFERS"
    })
    void what_is_uncertain_never_needs_no_listening(Verdict verdict, int percent, Kind kind) {
        LineVerdict line =
                new LineVerdict("", PearBuns.TOP.get(0), verdict, new Confidence(percent), "Because.", List.of());
        Comparison one = new Comparison("Buns", Rationals.ONE, List.of(line), List.of(), List.of());
        assertThat(Findings.of(one, List.of(), PearBuns.recipe(), Pantry.standard())
                        .groups())
                .extracting(Group::kind)
                .containsExactly(kind);
    }

    @Test
    void says_where_a_line_is_used() {
        assertThat(all().stream().filter(finding -> finding.what().equals("3 pears")))
                .extracting(Finding::where)
                .containsExactly("top, step 2");
    }

    /** The allergens are those of the pantry's rows. */
    @Test
    void warns_of_allergens_where_an_amount_differs_or_is_added() {
        assertThat(caution("60 g butter, soft"))
                .isEqualTo("Contains milk: say so in the description; the label and local food law decide.");
        assertThat(caution("2 tbsp sesame seeds")).startsWith("Contains sesame");
        assertThat(caution("400 g spelt flour")).as("it agrees").isEmpty();
    }

    @Test
    void an_addition_that_is_not_known_is_never_passed_over() {
        assertThat(caution("1 tsp rose paste")).startsWith("Not known here; check the label for allergens: say so");
    }

    @Test
    void every_moment_to_decide_about_is_there_once() {
        assertThat(FINDINGS.openMoments())
                .extracting(moment -> moment.at().toSeconds())
                .containsExactlyInAnyOrder(63L, 3725L, 40L, 95L, 90L, 170L, 150L);
    }
}
