package org.misecue.desk.begin;

import io.javalin.Javalin;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.misecue.desk.counter.Answer;
import org.misecue.desk.counter.Counter;
import org.misecue.desk.counter.Fields;
import org.misecue.desk.counter.OpenEpisode;
import org.misecue.desk.counter.Station;
import org.misecue.desk.counter.Tab;
import org.misecue.desk.counter.View;
import org.misecue.desk.door.Refusal;
import org.misecue.episode.FirstSettings;
import org.misecue.episode.NewEpisode;
import org.misecue.notice.BadInput;
import org.misecue.notice.Note;
import org.misecue.recipe.BrokenAmounts;
import org.misecue.recipe.Recipe;
import org.misecue.scale.Scaler;
import org.misecue.worktop.Worktop;

/** The recipe as it was understood, and the first settings of an episode for as long as nobody wrote others. */
public final class FirstLook implements Station {

    private static final int LONGEST = 200;

    /** What the form holds. */
    public record Slip(String title, String size, String amount, String takes, String fault) {}

    @Override
    public void open(Javalin server, Counter counter) {
        server.get("/e/{episode}/recipe", request -> {
            OpenEpisode episode = counter.episode(request);
            show(
                    request,
                    counter,
                    episode,
                    NewEpisode.settings(episode.folder())
                            .map(one -> new Slip(one.title(), one.size(), one.amount(), "" + one.takes(), "")));
        });
        server.post("/e/{episode}/recipe", request -> settle(request, counter, counter.episode(request)));
    }

    private static void show(Context request, Counter counter, OpenEpisode episode, Optional<Slip> slip) {
        Recipe recipe = episode.worktop().recipe();
        List<Note> notes = Stream.concat(BrokenAmounts.in(recipe).stream(), recipe.notes().stream())
                .distinct()
                .toList();
        Map<String, Object> values = new HashMap<>(Map.of("recipe", recipe, "notes", notes, "slip", slip));
        Answer.page(request, View.of(request, counter, episode, Tab.FILES), "desk/begin/recipe.jte", values);
    }

    private static void settle(Context request, Counter counter, OpenEpisode episode) {
        Slip slip = new Slip(
                field(request, "title"), field(request, "size"), field(request, "amount"), field(request, "takes"), "");
        try {
            FirstSettings settings = new FirstSettings(
                    slip.title, slip.size, slip.amount, slip.takes.matches("\\d") ? Integer.parseInt(slip.takes) : 0);
            Worktop worktop = episode.worktop();
            Scaler.scale(worktop.recipe(), settings.batch(), worktop.rules(), worktop.kitchen());
            NewEpisode.settle(episode.folder(), settings);
            request.redirect(episode.path("bowls"), HttpStatus.SEE_OTHER);
        } catch (BadInput e) {
            Slip wrong = new Slip(slip.title, slip.size, slip.amount, slip.takes, String.valueOf(e.getMessage()));
            request.status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(request, counter, episode, Optional.of(wrong));
        }
    }

    private static String field(Context request, String name) {
        String text = Fields.raw(request, name).strip();
        if (text.length() > LONGEST) {
            throw new Refusal(422, "The " + name + " has more than " + LONGEST + " letters; go back and shorten it.");
        }
        return text;
    }
}
