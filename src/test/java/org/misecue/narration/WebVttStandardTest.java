package org.misecue.narration;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * The W3C's web-platform tests for WebVTT, which lie beside the project in {@code shared/webvtt}. Checked is what concerns
 * cues, their ids, times and text.
 */
class WebVttStandardTest {

    /** These also say where a cue is drawn or how. We keep none of that, so of them only the number of cues is checked. */
    private static final Set<String> DRAWING = Set.of(
            "regions-id",
            "regions-lines",
            "regions-old",
            "regions-regionanchor",
            "regions-scroll",
            "regions-viewportanchor",
            "settings-align",
            "settings-line",
            "settings-position",
            "settings-region",
            "settings-size",
            "settings-vertical");

    /** The style sheets can't be seen from outside, says the test itself. */
    private static final Set<String> NOTHING_TO_CHECK = Set.of("stylesheets");

    /** Their expectations are loops, written out here: id|start|end|text, where there is something to expect. */
    private static final Map<String, List<String>> LOOPS = Map.of(
            "arrows",
            List.of("|0|1|text0", "|0|1|text1", "|0|1|text2", "|0|1|text3", "|0|1|text4", "|0|1|text5"),
            "timings-omitted-hours",
            List.of("|0|1|text0", "|0|1|text1", "|0|1|text2"),
            "timings-negative",
            List.of("|0|0|text0", "|1|0.999|text1", "|60|59.999|text2", "|3600|3599.999|text3"),
            "settings-multiple",
            List.of("id0|0|1|text0", "id1|0|1|text1"));

    private static final Pattern COUNT = Pattern.compile("cues\\.length, (\\d+)");
    private static final Pattern EXPECTED =
            Pattern.compile("cues\\[(\\d+)\\]\\.(id|text|startTime|endTime), (?:\"(.*)\"|'(.*)'|([\\d.]+))\\)");

    @TestFactory
    Stream<DynamicTest> files_are_parsed_as_the_standard_says() throws IOException {
        Path folder = folder("wpt-file-parsing");
        List<Path> expectations = files(folder, ".js");
        assertThat(expectations).hasSizeGreaterThan(30);
        return expectations.stream().map(js -> DynamicTest.dynamicTest(name(js), () -> checkFile(js)));
    }

    @TestFactory
    Stream<DynamicTest> cue_texts_become_the_plain_text_of_their_tree() throws IOException {
        List<DynamicTest> tests = new ArrayList<>();
        for (Path json : files(folder("wpt-cue-parsing"), ".json")) {
            for (JsonNode one : new ObjectMapper().readTree(json.toFile())) {
                String text = one.get("text").textValue();
                String tree = one.get("expectedTree").textValue();
                tests.add(DynamicTest.dynamicTest(name(json) + ": " + text.strip(), () -> checkText(text, tree)));
            }
        }
        assertThat(tests).hasSizeGreaterThan(60);
        return tests.stream();
    }

    private static void checkFile(Path js) throws IOException {
        String name = name(js);
        String expectation = Files.readString(js);
        List<WebVttFile.RawCue> cues = cues(js.resolveSibling(name + ".vtt"));
        Matcher count = COUNT.matcher(expectation);
        if (count.find()) {
            assertThat(cues).hasSize(Integer.parseInt(count.group(1)));
        } else {
            assertThat(NOTHING_TO_CHECK).contains(name);
        }
        if (LOOPS.containsKey(name)) {
            assertThat(cues.stream().map(WebVttStandardTest::line)).isEqualTo(LOOPS.get(name));
            return;
        }
        int checked = 0;
        Matcher expected = EXPECTED.matcher(expectation);
        while (expected.find()) {
            WebVttFile.RawCue cue = cues.get(Integer.parseInt(expected.group(1)));
            assertThat(value(cue, expected.group(2))).isEqualTo(value(expected));
            checked++;
        }
        boolean shouldSayMore = !cues.isEmpty() && !DRAWING.contains(name) && !NOTHING_TO_CHECK.contains(name);
        assertThat(checked).isGreaterThanOrEqualTo(shouldSayMore ? cues.size() : 0);
    }

    private static List<WebVttFile.RawCue> cues(Path file) throws IOException {
        String text = NarrationText.of(Files.readAllBytes(file), "test").text();
        return WebVttFile.parse(text).cues();
    }

    private static String line(WebVttFile.RawCue cue) {
        return String.join("|", cue.id(), value(cue, "startTime"), value(cue, "endTime"), cue.text());
    }

    private static String value(WebVttFile.RawCue cue, String property) {
        return switch (property) {
            case "id" -> cue.id();
            case "text" -> cue.text();
            case "startTime" -> seconds(TestCues.seconds(cue.start()));
            default -> seconds(TestCues.seconds(cue.end()));
        };
    }

    private static String value(Matcher expected) {
        if (expected.group(5) != null) {
            return seconds(Double.parseDouble(expected.group(5)));
        }
        String text = expected.group(3) != null ? expected.group(3) : expected.group(4);
        return text.replace("\\uFFFD", "\uFFFD");
    }

    private static String seconds(double value) {
        return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
    }

    /** As in a file: nulls are replaced, and a blank line ends the text. */
    private static void checkText(String text, String tree) {
        String inFile = text.replace('\0', '\uFFFD').split("\n\n", 2)[0];
        assertThat(inOneLine(WebVttCueText.parse(inFile).plainText())).isEqualTo(inOneLine(textOf(tree)));
    }

    /** The quoted nodes of the tree; their text may go over several lines. */
    private static String textOf(String tree) {
        StringBuilder out = new StringBuilder();
        Matcher node =
                Pattern.compile("(?ms)^\\| *\"(.*?)\"$(?=\\n\\||\\n?\\z)").matcher(tree);
        while (node.find()) {
            out.append(node.group(1));
        }
        return out.toString();
    }

    private static String inOneLine(String text) {
        return text.replaceAll("\\s+", " ").strip();
    }

    private static Path folder(String name) {
        Optional<Path> found = Stream.iterate(Path.of("").toAbsolutePath(), dir -> dir != null, Path::getParent)
                .map(dir -> dir.resolve("shared").resolve("webvtt").resolve(name))
                .filter(Files::isDirectory)
                .findFirst();
        if (found.isEmpty()) {
            Assumptions.abort("skipped: the W3C's tests were not found in ../shared/webvtt/" + name);
        }
        return found.orElseThrow();
    }

    private static List<Path> files(Path folder, String extension) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(extension))
                    .sorted()
                    .toList();
        }
    }

    private static String name(Path file) {
        String name = file.getFileName().toString();
        return name.substring(0, name.lastIndexOf('.'));
    }
}
