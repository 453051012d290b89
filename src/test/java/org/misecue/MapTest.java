package org.misecue;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Holds the map of DEVELOPERS.md: each package and the packages of ours that it may use. */
class MapTest {

    private static final Map<String, String> MAY_USE = new LinkedHashMap<>();

    static {
        MAY_USE.put("notice", "");
        MAY_USE.put("page", "notice");
        MAY_USE.put("quantity", "notice");
        MAY_USE.put("pantry", "notice quantity");
        MAY_USE.put("recipe", "notice quantity pantry");
        MAY_USE.put("scale", "notice quantity pantry recipe");
        MAY_USE.put("prep", "notice page quantity pantry recipe scale");
        MAY_USE.put("shots", "notice page quantity pantry recipe scale prep");
        MAY_USE.put("day", "notice page quantity recipe prep shots");
        MAY_USE.put("narration", "notice");
        MAY_USE.put("footage", "notice narration");
        MAY_USE.put("search", "notice quantity narration");
        MAY_USE.put("spoken", "notice quantity pantry recipe narration");
        MAY_USE.put("align", "notice quantity pantry recipe narration spoken");
        MAY_USE.put("shown", "notice narration footage");
        MAY_USE.put("compare", "notice page quantity pantry recipe narration spoken shown align claims");
        MAY_USE.put("claims", "notice quantity pantry recipe narration spoken shown");
        MAY_USE.put("offers", "notice quantity pantry recipe narration spoken");
        MAY_USE.put("decide", "notice page quantity pantry recipe narration compare claims episode");
        MAY_USE.put(
                "publish", "notice page quantity pantry recipe scale narration spoken align compare offers episode");
        MAY_USE.put("episode", "notice quantity recipe scale narration");
        MAY_USE.put(
                "edit",
                "notice page quantity recipe shots narration footage spoken align compare publish decide episode");
        MAY_USE.put("worktop", String.join(" ", MAY_USE.keySet()));
        MAY_USE.put("desk", String.join(" ", MAY_USE.keySet()));
    }

    private final JavaClasses ours = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("org.misecue");

    @Test
    void each_package_uses_only_those_before_it() {
        for (String name : MAY_USE.keySet()) {
            List<String> allowed = List.of(MAY_USE.getOrDefault(name, "").split(" "));
            String[] forbidden = Stream.concat(MAY_USE.keySet().stream(), Stream.of("cli"))
                    .filter(other -> !other.equals(name) && !allowed.contains(other))
                    .map(other -> "org.misecue." + other + "..")
                    .toArray(String[]::new);
            noClasses()
                    .that()
                    .resideInAPackage("org.misecue." + name + "..")
                    .should()
                    .dependOnClassesThat()
                    .resideInAnyPackage(forbidden)
                    .allowEmptyShould(true)
                    .check(ours);
        }
    }

    @Test
    void every_package_is_on_the_map() {
        Set<String> packages = ours.stream()
                .map(JavaClass::getPackageName)
                .filter(name -> name.startsWith("org.misecue."))
                .map(name -> name.substring("org.misecue.".length()).split("\\.")[0])
                .collect(Collectors.toSet());
        packages.remove("cli");
        assertThat(MAY_USE.keySet()).containsAll(packages);
    }

    @Test
    void no_packages_go_round_in_circles() {
        slices().matching("org.misecue.(*)..").should().beFreeOfCycles().check(ours);
    }
}
