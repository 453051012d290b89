package org.misecue.recipe.manuscript;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.Test;
import org.misecue.notice.BadInput;

/** A document that keeps its reader busy is left behind. */
class TimeLimitTest {

    private static final Document SLOW = new Document("slow.docx", "text/plain", new byte[0]);

    @Test
    void a_reader_that_never_ends_is_one_sentence_soon() {
        CountDownLatch never = new CountDownLatch(1);
        long start = System.nanoTime();
        assertThatThrownBy(() -> TimeLimit.within(Duration.ofMillis(50), SLOW, () -> endless(never)))
                .isInstanceOf(BadInput.class)
                .hasMessage("slow.docx: the document takes too long to read; paste the recipe into a text file.");
        assertThat(Duration.ofNanos(System.nanoTime() - start)).isLessThan(Duration.ofSeconds(5));
        never.countDown();
    }

    /** Like most libraries it does not ask whether it should stop. */
    private static String endless(CountDownLatch never) {
        while (never.getCount() > 0) {
            Thread.onSpinWait();
        }
        return "";
    }

    @Test
    void what_is_read_in_time_is_answered() {
        assertThat(TimeLimit.within(Duration.ofSeconds(20), SLOW, () -> "read")).isEqualTo("read");
    }

    @Test
    void what_a_reader_complains_of_is_passed_on_as_it_is() {
        assertThatThrownBy(() -> TimeLimit.within(TimeLimit.LONGEST, SLOW, () -> {
                    throw SLOW.tooLong();
                }))
                .isInstanceOf(BadInput.class)
                .hasMessage(SLOW.tooLong().getMessage());
        assertThatThrownBy(() -> TimeLimit.within(TimeLimit.LONGEST, SLOW, () -> {
                    throw new StackOverflowError();
                }))
                .isInstanceOf(StackOverflowError.class);
    }
}
