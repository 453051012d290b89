package org.misecue.shown;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.util.Random;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.misecue.footage.Grey;

class StandingEdgesTest {

    private static final int WIDTH = 320;
    private static final int HEIGHT = 180;

    private static StandingEdges seen(Grey picture) {
        StandingEdges edges = new StandingEdges(WIDTH, HEIGHT);
        IntStream.range(0, 3).forEach(i -> edges.see(picture));
        return edges;
    }

    private static long count(IntPredicate edges) {
        return IntStream.range(0, WIDTH * HEIGHT).filter(edges).count();
    }

    @Test
    void edges_of_letters_go_on_and_those_of_grain_do_not() {
        StandingEdges letters =
                seen(Pictures.drawn(WIDTH, HEIGHT, pen -> Pictures.text(pen, "175 g rye flour", 20, 100, 26)));
        Random random = new Random(1);
        StandingEdges grain = seen(Pictures.drawn(WIDTH, HEIGHT, pen -> {
            for (int i = 0; i < WIDTH * HEIGHT; i++) {
                int grey = 90 + random.nextInt(61);
                pen.setColor(new Color(grey, grey, grey));
                pen.fillRect(i % WIDTH, i / WIDTH, 1, 1);
            }
        }));

        assertThat((double) count(letters::isNewStroke) / count(letters::isNew)).isGreaterThan(0.6);
        assertThat((double) count(grain::isNewStroke) / count(grain::isNew)).isLessThan(0.2);
    }
}
