package org.misecue.narration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.Map;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.misecue.notice.BadInput;
import org.misecue.notice.Note;

/**
 * What is expected follows the W3C's Timed Text Markup Language 1 (time value expressions, parameter attributes, time
 * containment) and SMPTE ST 12 for dropped numbers; both from memory.
 */
class TtmlReaderTest {

    private static Narration read(String attributes, String body) {
        return TestCues.read("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<!-- made on the set -->\n"
                + "<tt xmlns=\"http://www.w3.org/ns/ttml\" xmlns:ttp=\"http://www.w3.org/ns/ttml#parameter\""
                + " xmlns:ttm=\"http://www.w3.org/ns/ttml#metadata\" xmlns:tts=\"http://www.w3.org/ns/ttml#styling\" "
                + attributes + ">\n" + body + "\n</tt>\n");
    }

    private static Narration body(String inside) {
        return read("", "<body><div>" + inside + "</div></body>");
    }

    @ParameterizedTest
    @CsvSource({
        "'', 00:01:05, 65",
        "'', 00:01:05.25, 65.25",
        "'', 100:00:00.5, 360000.5",
        "'', 00:00:01:15, 1.5",
        "'', 65s, 65",
        "'', 1.5m, 90",
        "'', 0.5h, 1800",
        "'', 250ms, 0.25",
        "'', 45f, 1.5",
        "'', 7t, 7",
        "frameRate=25, 00:00:01:05, 1.2",
        "frameRate=25, 5f, 0.2",
        "frameRate=25, 50t, 2",
        "frameRate=25 subFrameRate=4, 00:00:00:01.2, 0.06",
        "frameRate=25 subFrameRate=4, 100t, 1",
        "tickRate=10000000, 15000000t, 1.5",
        "frameRate=30 frameRateMultiplier=1000/1001, 30f, 1.001",
        "frameRate=30 frameRateMultiplier=1000/1001, 00:01:00:00, 60",
        "frameRate=30 frameRateMultiplier=1000/1001 timeBase=smpte, 00:01:00:00, 60.06",
        "frameRate=30 frameRateMultiplier=1000/1001 timeBase=smpte dropMode=dropNTSC, 00:01:00:02, 60.06",
        "frameRate=30 frameRateMultiplier=1000/1001 timeBase=smpte dropMode=dropNTSC, 01:00:00:00, 3599.9964",
    })
    void times_are_read_by_the_parameters_of_the_document(String parameters, String time, double seconds) {
        Map<String, String> given = parameters.isEmpty()
                ? Map.of()
                : java.util.Arrays.stream(parameters.split(" "))
                        .map(one -> one.split("=", -1))
                        .collect(java.util.stream.Collectors.toMap(one -> one[0], one -> one[1].replace('/', ' ')));
        TtmlClock clock = TtmlParameters.clock(name -> Optional.ofNullable(given.get(name)), problem -> {});
        assertThat(clock.time(time).orElseThrow().toNanos() / 1e9)
                .isEqualTo(seconds, org.assertj.core.data.Offset.offset(1e-6));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "5",
                "1:05",
                "00:61:00",
                "00:00:01:30",
                "00:00:01:00.1",
                "5 s",
                "-1s",
                "wallclock(2026)",
                "1e3s"
            })
    void what_is_no_time_is_none(String time) {
        assertThat(TtmlParameters.clock(name -> Optional.empty(), problem -> {}).time(time))
                .isEmpty();
    }

    @Property
    void a_clock_time_is_the_seconds_that_it_shows(
            @ForAll @IntRange(max = 99) int hours,
            @ForAll @IntRange(max = 59) int minutes,
            @ForAll @IntRange(max = 59) int seconds,
            @ForAll @IntRange(max = 999) int millis) {
        TtmlClock clock = TtmlParameters.clock(name -> Optional.empty(), problem -> {});
        long all = ((hours * 60L + minutes) * 60 + seconds) * 1000 + millis;
        assertThat(clock.time("%02d:%02d:%02d.%03d".formatted(hours, minutes, seconds, millis)))
                .isEqualTo(clock.time(all + "ms"))
                .hasValue(java.time.Duration.ofMillis(all));
    }

    @Test
    void each_paragraph_is_a_cue_without_its_markup() {
        Narration narration = body(
                "<p begin=\"5s\" end=\"9s\">weigh <span tts:color=\"red\">the</span><br/>flour &amp; salt</p>"
                        + "<p begin=\"10s\" dur=\"2s\"><metadata>not said</metadata>fold<tts:odd>nor this</tts:odd></p>");
        assertThat(TestCues.lines(narration)).containsExactly("5.0-9.0 weigh the flour & salt", "10.0-12.0 fold");
        assertThat(narration.notes()).isEmpty();
    }

    @Test
    void times_count_from_what_is_around_and_end_with_it() {
        Narration narration = read(
                "",
                "<body begin=\"100s\"><div begin=\"10s\" end=\"20s\"><p begin=\"1s\" end=\"4s\">one</p><p begin=\"5s\" end=\"60s\">two</p>"
                        + "<p>three</p></div></body>");
        assertThat(TestCues.lines(narration))
                .containsExactly("110.0-120.0 three", "111.0-114.0 one", "115.0-120.0 two");
    }

    @Test
    void in_a_sequence_each_begins_when_the_one_before_has_ended() {
        Narration narration = read(
                "",
                "<body><div begin=\"10s\" timeContainer=\"seq\"><p dur=\"2s\">one</p><p begin=\"1s\" dur=\"2s\">two</p><p end=\"3s\">three</p></div></body>");
        assertThat(TestCues.lines(narration)).containsExactly("10.0-12.0 one", "13.0-15.0 two", "15.0-18.0 three");
    }

    @Test
    void spans_give_their_words_a_time() {
        Narration narration = body("<p begin=\"10s\" end=\"20s\">weigh <span begin=\"4s\">the flour</span> now</p>"
                + "<p><span begin=\"30s\" end=\"31s\">fold </span><span begin=\"31s\" end=\"33s\">gently</span></p>");
        assertThat(TestCues.words(narration.cues().get(0))).startsWith("10.0 weigh, 14.0 the");
        assertThat(TestCues.lines(narration)).contains("30.0-33.0 fold gently");
        assertThat(TestCues.words(narration.cues().get(1))).isEqualTo("30.0 fold, 31.0 gently");
    }

    @Test
    void whoever_speaks_is_named() {
        Narration narration = read(
                "",
                "<head><metadata><ttm:agent xml:id=\"a\" type=\"person\"><ttm:name type=\"full\">Nell  Marsh</ttm:name><ttm:name type=\"alias\">N</ttm:name></ttm:agent></metadata></head>"
                        + "<body ttm:agent=\"a\"><div><p begin=\"1s\" end=\"2s\">mine</p><p begin=\"3s\" end=\"4s\" ttm:agent=\"b\">whose</p></div></body>");
        assertThat(TestCues.lines(narration)).containsExactly("1.0-2.0 Nell Marsh: mine", "3.0-4.0 whose");
    }

    @Test
    void the_reading_over_a_word_is_not_said_twice() {
        assertThat(TestCues.lines(body(
                        "<p begin=\"1s\" end=\"2s\"><span tts:ruby=\"container\"><span tts:ruby=\"base\">matcha</span>"
                                + "<span tts:ruby=\"text\">powdered tea</span></span></p>")))
                .containsExactly("1.0-2.0 matcha");
    }

    @Test
    void a_damaged_time_costs_its_own_paragraph_only() {
        Narration narration = body("<p begin=\"soon\">lost</p>\n<p begin=\"5s\" end=\"9s\">kept</p>");
        assertThat(TestCues.lines(narration)).containsExactly("5.0-9.0 kept");
        assertThat(narration.notes())
                .extracting(Note::toString)
                .containsExactly(
                        "main:4: expected times such as 00:01:05.000, 00:01:05:06 or 65.5s; p was left out with everything in it");
    }

    @Test
    void without_any_time_a_paragraph_is_left_out() {
        assertThat(body("<p>when</p><p begin=\"5s\" end=\"9s\">kept</p>").notes())
                .extracting(Note::toString)
                .containsExactly("main:4: no time stands on this paragraph or around it; it was left out");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "ttp:frameRate='25fps'|frameRate: expected a whole number such as 25, not “25fps”; 30 frames a second was assumed",
                "ttp:frameRate='25' ttp:tickRate='many'|tickRate: expected a whole number such as 25, not “many”; as many as frames was assumed",
                "ttp:subFrameRate='0'|subFrameRate: expected a whole number such as 25, not “0”; 1 was assumed",
                "ttp:frameRateMultiplier='1000/1001'|frameRateMultiplier: expected two whole numbers such as 1000 1001, not “1000/1001”; 1 was assumed",
                "ttp:timeBase='tape'|timeBase: expected one of media, smpte, clock, not “tape”; media was assumed",
                "ttp:timeBase='smpte' ttp:dropMode='dropPAL'|dropMode is dropPAL, which is not followed; its time code was counted as nonDrop",
                "ttp:timeBase='clock'|timeBase is clock, so its times are those of a wall clock; they were taken as they stand, and an offset under narration in episode.yaml brings them onto the film's clock",
                "ttp:timeBase='smpte' ttp:markerMode='discontinuous'|markerMode is discontinuous, so its time code may jump, and what comes after a jump cannot be placed; the times were taken as if it ran through",
                "ttp:timeBase='media' ttp:markerMode='discontinuous'|",
                "ttp:frameRate=' 25 ' ttp:timeBase='smpte' ttp:dropMode='nonDrop'|"
            })
    void a_parameter_that_cannot_be_read_or_followed_is_told_with_its_line(String parameters, String note) {
        Narration narration = read(parameters.replace('\'', '"'), "<body><div><p begin=\"5s\">weigh</p></div></body>");
        assertThat(narration.cues()).hasSize(1);
        assertThat(narration.notes())
                .extracting(Note::toString)
                .isEqualTo(note == null ? java.util.List.of() : java.util.List.of("main:3: " + note));
    }

    @Test
    void what_begins_after_its_parent_has_ended_is_never_on() {
        Narration narration = read(
                "",
                "<body><div begin=\"10s\" end=\"20s\">\n<p begin=\"1s\">fold <span begin=\"15s\">late</span> it</p>\n"
                        + "<p begin=\"10s\" end=\"12s\">at the end</p>\n<p begin=\"1h\">far off</p></div>\n"
                        + "<div begin=\"30s\" end=\"5s\"><p>a slip</p><p begin=\"3s\">another</p></div></body>");
        assertThat(TestCues.lines(narration)).containsExactly("11.0-20.0 fold it", "30.0-32.0 a slip");
        assertThat(narration.notes())
                .extracting(Note::toString)
                .containsExactly(
                        "main:5: span begins when what it stands in is over; it was left out with everything in it",
                        "main:6: p begins when what it stands in is over; it was left out with everything in it",
                        "main:7: p begins when what it stands in is over; it was left out with everything in it",
                        "main:8: p begins when what it stands in is over; it was left out with everything in it",
                        "main:8: the cue ends before it begins; its end was taken from the length of its text");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "<?xml version='1.0'?><tt><body><p begin='5s' end='9s'>weigh</p></body></tt>|5.0-9.0 weigh",
                "<?xml version='1.0'?><!DOCTYPE tt [ ]><tt><body><p begin='5s' end='9s'>weigh</p></body></tt>|5.0-9.0 weigh",
                "<?xml version='1.0'?><cuts><cut at='5s'/></cuts>|main.xml:1:1: expected TTML, XML that begins with tt, but this begins with “cuts”; save the narration as TTML, WebVTT or SubRip",
                "no markup|main.xml:1:1: expected XML that is whole, but it is broken here; write the file anew from the program that made it"
            })
    void an_xml_file_is_ttml_or_a_sentence(String file, String expected) {
        byte[] bytes = file.getBytes(java.nio.charset.StandardCharsets.UTF_8);
        String read;
        try {
            read = String.join("", TestCues.lines(NarrationReader.read(bytes, "main.xml")));
        } catch (BadInput e) {
            read = e.getMessage();
        }
        assertThat(read).isEqualTo(expected);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<body><div><p begin=\"1s\">cut off",
                "<body><div><p begin=\"1s\">&undeclared;</p></div></body>",
                "<body></div>"
            })
    void broken_xml_is_one_sentence_with_its_line(String body) {
        assertThatExceptionOfType(BadInput.class)
                .isThrownBy(() -> read("", body))
                .withMessageStartingWith("main:")
                .withMessageContaining("it is broken here");
    }

    @Test
    void a_document_that_reaches_outside_or_nests_without_end_is_refused() {
        String bomb =
                "<?xml version=\"1.0\"?><!DOCTYPE tt SYSTEM \"file:///etc/hostname\"><tt><body><p begin=\"1s\">&a;</p></body></tt>";
        assertThatExceptionOfType(BadInput.class).isThrownBy(() -> TestCues.read(bomb));
        assertThatExceptionOfType(BadInput.class)
                .isThrownBy(() -> body("<div>".repeat(200) + "</div>".repeat(200)))
                .withMessageContaining("few levels");
    }
}
