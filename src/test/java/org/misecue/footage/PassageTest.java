package org.misecue.footage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.bytedeco.ffmpeg.global.avfilter.av_buffersink_get_frame;
import static org.bytedeco.ffmpeg.global.avfilter.avfilter_graph_alloc;
import static org.bytedeco.ffmpeg.global.avfilter.avfilter_graph_config;
import static org.bytedeco.ffmpeg.global.avfilter.avfilter_graph_free;
import static org.bytedeco.ffmpeg.global.avfilter.avfilter_graph_get_filter;
import static org.bytedeco.ffmpeg.global.avfilter.avfilter_graph_parse_ptr;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_alloc;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_free;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_unref;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;
import org.bytedeco.ffmpeg.avfilter.AVFilterContext;
import org.bytedeco.ffmpeg.avfilter.AVFilterGraph;
import org.bytedeco.ffmpeg.avfilter.AVFilterInOut;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.javacpp.FloatPointer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PassageTest {

    private static final int LENGTH = 2 * Mono.RATE;
    private static final int ASIDE = Mono.RATE / 2;

    /** At half the rate. */
    private static float[] voice(long seed) {
        float[] talk = Babble.talk(seed, 6);
        float[] slow = new float[talk.length / 2];
        for (int i = 0; i < slow.length; i++) {
            slow[i] = (talk[2 * i] + talk[2 * i + 1]) / 2;
        }
        return slow;
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2500, 4000, 7999, 8000})
    void a_passage_is_found_to_the_sample(int place) {
        float[] sound = voice(3);
        float[] passage = Arrays.copyOfRange(sound, place, place + LENGTH);
        float[] in = Arrays.copyOf(sound, LENGTH + 2 * ASIDE);
        assertThat(Passage.find(passage, in)).hasValue(place);
    }

    /** The sum of products at each place, divided by the root of both energies: correlation by its definition. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void it_lies_where_the_plain_sum_of_products_is_greatest(long seed) {
        float[] sound = voice(seed);
        float[] noise = Babble.noise(seed, 6);
        float[] in = Arrays.copyOf(sound, LENGTH + 2 * ASIDE);
        float[] passage = Arrays.copyOfRange(sound, 3210, 3210 + LENGTH);
        for (int i = 0; i < LENGTH; i++) {
            passage[i] += 0.02f * noise[i];
        }

        int best = IntStream.rangeClosed(0, in.length - LENGTH)
                .boxed()
                .max(Comparator.comparing(place -> product(passage, in, place)))
                .orElseThrow();

        assertThat(Passage.find(passage, in)).hasValue(best);
    }

    private static double product(float[] passage, float[] in, int place) {
        double product = 0;
        double energy = 1e-12;
        for (int i = 0; i < passage.length; i++) {
            product += passage[i] * in[place + i];
            energy += in[place + i] * in[place + i];
        }
        return product / Math.sqrt(energy);
    }

    @Test
    void where_it_is_not_there_nothing_is_found() {
        float[] passage = Arrays.copyOf(voice(5), LENGTH);
        assertThat(Passage.find(passage, Arrays.copyOf(voice(6), LENGTH + 2 * ASIDE)))
                .isEmpty();
        assertThat(Passage.find(passage, new float[LENGTH + 2 * ASIDE])).isEmpty();
        assertThat(Passage.find(new float[LENGTH], new float[LENGTH + 2 * ASIDE]))
                .isEmpty();
    }

    /**
     * FFmpeg's own {@code axcorrelate} gives 1 where two streams are the same sample for sample: it does where the second film is
     * laid as we say, and not a few samples beside that.
     */
    @Test
    void ffmpegs_cross_correlation_finds_the_films_alike_there(@TempDir Path folder) {
        float[] talk = Babble.talk(14, 40);
        Path one = Microphone.good(0, 30).at(Babble.RATE).record(talk, folder.resolve("one.wav"));
        Path two = Microphone.good(7.25, 30).softer(12).at(Babble.RATE).record(talk, folder.resolve("two.wav"));

        Offset offset = CommonSound.beside(CommonSoundTest.listen(one), CommonSoundTest.listen(two))
                .offset()
                .orElseThrow();

        long samples = Math.round(offset.later().toNanos() * (double) Babble.RATE / 1e9);
        assertThat(alike(one, two, samples)).isGreaterThan(0.99);
        assertThat(alike(one, two, samples + 3)).isLessThan(0.9);
        assertThat(alike(one, two, samples - 3)).isLessThan(0.9);
    }

    /** The middle one of what the filter says over twenty seconds. */
    private static double alike(Path one, Path two, long later) {
        AVFilterGraph graph = avfilter_graph_alloc();
        String chain = ("amovie=filename=%s,aformat=sample_fmts=fltp,atrim=start_sample=%d,asetpts=N/SR/TB[a];"
                        + "amovie=filename=%s,aformat=sample_fmts=fltp,asetpts=N/SR/TB[b];"
                        + "[a][b]axcorrelate=size=1600:algo=slow,atrim=duration=20,abuffersink@out")
                .formatted(one, later, two);
        Ffmpeg.done(
                avfilter_graph_parse_ptr(graph, chain, new AVFilterInOut(null), new AVFilterInOut(null), null), chain);
        Ffmpeg.done(avfilter_graph_config(graph, null), chain);
        AVFilterContext sink = avfilter_graph_get_filter(graph, "abuffersink@out");
        AVFrame frame = av_frame_alloc();
        IntStream.Builder values = IntStream.builder();
        while (av_buffersink_get_frame(sink, frame) >= 0) {
            FloatPointer said = new FloatPointer(frame.data(0));
            for (int i = 0; i < frame.nb_samples(); i += 100) {
                values.add(Math.round(1000 * said.get(i)));
            }
            av_frame_unref(frame);
        }
        av_frame_free(frame);
        avfilter_graph_free(graph);
        int[] sorted = values.build().sorted().toArray();
        return sorted[sorted.length / 2] / 1000.0;
    }
}
