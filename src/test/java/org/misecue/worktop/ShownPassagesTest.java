package org.misecue.worktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.misecue.compare.Picture;
import org.misecue.episode.Episode;
import org.misecue.search.Hit;
import org.misecue.search.MomentIndex;
import org.misecue.search.Passage;
import org.misecue.shown.Card;
import org.misecue.shown.CardLine;
import org.misecue.shown.ShownText;

/** What a film shows is found once somebody had it read, and no film is read for it; the episode is invented. */
class ShownPassagesTest {

    @TempDir
    Path folder;

    private Path film;

    @BeforeEach
    void episode() throws Exception {
        Files.writeString(folder.resolve("recipe.md"), "# Rye biscuits\n\n- 180 g rye flour\n\n1. Mix the flour in.\n");
        Files.createDirectories(folder.resolve("narration"));
        Files.writeString(
                folder.resolve("narration/take-1.txt"), "[0:05] so i mix the flour in\n[0:40] and that is it\n");
        Files.createDirectories(folder.resolve("footage"));
        film = Files.writeString(folder.resolve("footage/take-1.mp4"), "no film at all");
    }

    @Test
    void a_card_is_found_where_it_stood_as_soon_as_it_was_read() {
        Index index = index();
        index.build();
        assertThat(found("180 g rye")).noneMatch(hit -> hit.kind() == Passage.Kind.SHOWN);

        Card card = new Card(
                "footage/take-1.mp4",
                Duration.ofSeconds(12),
                Duration.ofSeconds(15),
                List.of(new CardLine("Rye biscuits", false), new CardLine("180 g rye flour", true)));
        Episode episode = Episode.locate(folder);
        new KeptReading(episode.state(), film, card.film())
                .keep(new ShownText(card.film(), List.of(card), 1, Duration.ofSeconds(60), List.of()));
        assertThat(index.isFresh()).isFalse();

        index().build();
        Hit first = found("180 g rye").get(0);
        assertThat(first.kind()).isEqualTo(Passage.Kind.SHOWN);
        assertThat(first.at()).isEqualTo(Duration.ofSeconds(12));
        assertThat(first.source()).isEqualTo("footage/take-1.mp4");
    }

    private Index index() {
        OwnPantry own = new OwnPantry(Optional.empty(), folder);
        return new Index(new Worktop(Episode.locate(folder), own, own::read, worktop -> Picture.NONE));
    }

    private List<Hit> found(String query) {
        return MomentIndex.find(folder, query, 10).hits();
    }
}
