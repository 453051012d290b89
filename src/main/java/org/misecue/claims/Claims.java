package org.misecue.claims;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.misecue.narration.Moment;
import org.misecue.narration.Narration;
import org.misecue.notice.Place;
import org.misecue.pantry.Pantry;
import org.misecue.recipe.Component;
import org.misecue.recipe.IngredientLine;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.Step;
import org.misecue.shown.Card;
import org.misecue.shown.CardLine;
import org.misecue.spoken.WordStream;

/**
 * Finds the claims that are made to viewers ("dairy free", "suitable for coeliacs") and holds them against what is known
 * of the ingredients. What contradicts a claim comes first of all.
 */
public final class Claims {

    private final Recipe recipe;
    private final Pantry pantry;
    private final Judge judge;
    private final Map<String, Claim> found = new LinkedHashMap<>();

    private Claims(Recipe recipe, List<String> unwritten, Pantry pantry) {
        this.recipe = recipe;
        this.pantry = pantry;
        this.judge = new Judge(recipe, unwritten, pantry);
    }

    /** Without texts of the producer's own. */
    public static List<Claim> of(
            Recipe recipe, List<Narration> narrations, List<Card> cards, List<String> unwritten, Pantry pantry) {
        return of(recipe, narrations, cards, List.of(), unwritten, pantry);
    }

    /**
     * Every claim, the gravest ruling first, then in the order in which they are made: spoken, shown, written.
     *
     * @param texts what the producer writes beside the film; the recipe's own words are looked at anyway
     * @param unwritten names of ingredients that were added without standing in the recipe
     */
    public static List<Claim> of(
            Recipe recipe,
            List<Narration> narrations,
            List<Card> cards,
            List<Written> texts,
            List<String> unwritten,
            Pantry pantry) {
        Claims claims = new Claims(recipe, unwritten, pantry);
        narrations.forEach(claims::listen);
        cards.forEach(claims::look);
        claims.recipeTexts().forEach(claims::read);
        texts.forEach(claims::read);
        return claims.found.values().stream()
                .sorted(Comparator.comparing(Claim::ruling))
                .toList();
    }

    private void listen(Narration narration) {
        take(WordStream.of(List.of(narration)), Via.SPOKEN, Place.of(narration.source()), false);
    }

    private void look(Card card) {
        for (CardLine line : joined(card.lines())) {
            take(
                    OwnClaims.stream(card.film(), card.from(), line.text()),
                    Via.SHOWN,
                    Place.of(card.film()),
                    line.doubtful());
        }
    }

    /** A lone "FREE" belongs to the line above it. */
    private static List<CardLine> joined(List<CardLine> lines) {
        List<CardLine> joined = new ArrayList<>();
        for (CardLine line : lines) {
            boolean lone = line.text().strip().equalsIgnoreCase("free") && !joined.isEmpty();
            CardLine above = lone ? joined.remove(joined.size() - 1) : line;
            joined.add(
                    lone ? new CardLine(above.text() + " " + line.text(), above.doubtful() || line.doubtful()) : line);
        }
        return joined;
    }

    private void read(Written text) {
        text.text()
                .lines()
                .forEach(line -> take(
                        OwnClaims.stream(text.place().file(), Duration.ZERO, line), Via.WRITTEN, text.place(), false));
    }

    /** Title, parts, lines and steps, with their lines in the file where they are known. */
    private List<Written> recipeTexts() {
        List<Written> texts = new ArrayList<>();
        texts.add(new Written(Place.of(recipe.source()), recipe.title()));
        for (Component part : recipe.components()) {
            texts.add(new Written(Place.of(recipe.source()), part.name()));
            for (IngredientLine line : part.lines()) {
                texts.add(new Written(Place.of(recipe.source(), line.line()), line.text()));
            }
        }
        recipe.settings()
                .forEach(setting -> texts.add(new Written(Place.of(recipe.source(), setting.line()), setting.what())));
        for (Step step : recipe.steps()) {
            texts.add(new Written(Place.of(recipe.source(), step.line()), step.text()));
        }
        return texts;
    }

    private void take(WordStream words, Via via, Place place, boolean doubtful) {
        List<Phrase> phrases = new ClaimGrammar(words).all();
        if (phrases.isEmpty()) {
            return;
        }
        Subjects subjects = new Subjects(words, recipe, pantry);
        Framing framing = new Framing(words, subjects, via != Via.SPOKEN);
        for (List<Phrase> joined : Joined.phrases(phrases, words)) {
            int start = joined.get(0).start();
            int end = joined.get(joined.size() - 1).end();
            for (Phrase phrase : joined) {
                framing.subject(phrase, start, end)
                        .ifPresent(about -> keep(phrase, about, words, via, place, doubtful, subjects));
            }
        }
    }

    private void keep(
            Phrase phrase, Subject about, WordStream words, Via via, Place place, boolean doubtful, Subjects subjects) {
        Denial denial = phrase.denial();
        boolean suits = phrase.form() == Phrase.Form.SUITS || phrase.form() == Phrase.Form.MAY_EAT;
        boolean medical = suits && !denial.key().matches("vegan|vegetarian");
        List<IngredientLine> lines =
                about.kind() == Subject.Kind.INGREDIENT ? subjects.linesOf(about.name()) : List.of();
        Judge.Judgement judged = judge.of(denial, about, medical, lines);
        Optional<Moment> moment = via == Via.WRITTEN ? Optional.empty() : Optional.of(words.moment(phrase.start()));
        String where = via == Via.WRITTEN ? place.toString() : place.file();
        String key =
                String.join(" | ", denial.key(), about.words(), via.name().toLowerCase(java.util.Locale.ROOT), where);
        Claim claim = new Claim(
                key,
                words.normal(phrase.start(), phrase.end()),
                denial.key(),
                about,
                via,
                moment,
                List.of(),
                place,
                words.quote(phrase.start(), phrase.end()),
                phrase.doubtful() || doubtful,
                judged.ruling(),
                judged.reason(),
                judged.because(),
                denial.law());
        found.merge(key, claim, Claims::again);
    }

    /** The same claim once more; it is doubtful only if it was never heard clearly. */
    private static Claim again(Claim first, Claim later) {
        List<Moment> moments = new ArrayList<>(first.again());
        later.moment().ifPresent(moments::add);
        return new Claim(
                first.key(),
                first.words(),
                first.denies(),
                first.about(),
                first.via(),
                first.moment(),
                List.copyOf(moments),
                first.place(),
                first.quote(),
                first.doubtful() && later.doubtful(),
                first.ruling(),
                first.reason(),
                first.because(),
                first.caution());
    }
}
