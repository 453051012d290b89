package org.misecue.claims;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.misecue.claims.Denials.Term;
import org.misecue.claims.Phrase.Form;
import org.misecue.spoken.WordStream;

/** Claims by whom a bake is for: "suitable for coeliacs", "safe for people with a nut allergy". */
final class Eaters {

    private static final Set<String> SUITS = Denials.set(
            "suitable safe fine ok okay good great perfect ideal right alright lovely works work friendly suits");
    private static final Set<String> GIVE = Denials.set("give serve feed offer");
    private static final Set<String> BETWEEN =
            Denials.set("for people folk folks anyone anybody everyone everybody someone "
                    + "somebody those kids children friends guests who who's is are has have had got with a an any the your all "
                    + "you you're you've they're on avoiding severe serious both that our");
    private static final Set<String> ILLS =
            Set.of("allergy", "allergies", "allergic", "intolerance", "intolerances", "intolerant", "sufferers");
    private static final Set<String> AVOIDS = Denials.set("can't cannot don't doesn't not");
    private static final Set<String> EAT = Denials.set("have eat tolerate touch do eating having");
    private static final Pattern MAY = Pattern.compile(
            "(?:people |sufferers |then )*(?:"
                    + "(?:this|it|these|they)(?: one| cake| bake)? (?:is|are|will be|should be)(?: \\w+)? (?:fine|safe|okay|ok|good|alright|perfect|for you|one|the one|for them)\\b.*"
                    + "|(?:you )?(?:can|could) (?:\\w+ )?(?:eat|have|enjoy) (?:this|it|these|them|one)\\b.*"
                    + "|(?:you're|you are|you'll be) (?:\\w+ )?(?:fine|safe|okay|ok|good|alright) (?:with|to eat|eating) (?:this|it|these)\\b.*)");
    private static final int LONGEST_WAY = 7;
    private static final int MAY_REACH = 9;

    private final WordStream words;

    Eaters(WordStream words) {
        this.words = words;
    }

    List<Phrase> at(int at) {
        List<Phrase> suits = suits(at);
        if (!suits.isEmpty()) {
            return suits;
        }
        Optional<Term> eaters = group(at);
        if (eaters.isEmpty()) {
            return List.of();
        }
        Term who = eaters.get();
        if (words.text(who.end()).equals("friendly") && !words.wall(who.end())) {
            return List.of(new Phrase(at, who.end() + 1, who.denial(), Form.SUITS, who.doubtful()));
        }
        boolean may =
                MAY.matcher(words.normal(who.end(), who.end() + MAY_REACH)).matches();
        return may ? List.of(new Phrase(at, who.end(), who.denial(), Form.MAY_EAT, who.doubtful())) : List.of();
    }

    /** "suitable for vegetarians and vegans". */
    private List<Phrase> suits(int start) {
        boolean given =
                GIVE.contains(words.text(start)) && words.text(start + 2).equals("to");
        boolean suits =
                SUITS.contains(words.text(start)) && words.text(start + 1).equals("for");
        if (!given && !suits) {
            return List.of();
        }
        List<Term> groups = new ArrayList<>();
        int at = start + (given ? 3 : 2);
        int last = at;
        while (at < last + LONGEST_WAY && at < words.size() && !words.wall(at)) {
            Optional<Term> group = group(at);
            if (group.isPresent()) {
                groups.add(group.get());
                at = group.get().end();
                last = at;
            } else if (BETWEEN.contains(words.text(at)) || words.text(at).matches("and|or")) {
                at++;
            } else {
                break;
            }
        }
        int end = last;
        return groups.stream()
                .map(group -> new Phrase(start, end, group.denial(), Form.SUITS, group.doubtful()))
                .toList();
    }

    /** "coeliacs", "vegan people", "a nut allergy", "allergic to nuts", "lactose intolerant". */
    private Optional<Term> group(int at) {
        Optional<Term> eaters = Denials.eaters(words, at).or(() -> Denials.alone(words, at));
        if (eaters.isPresent()) {
            return eaters;
        }
        if (AVOIDS.contains(words.text(at)) && EAT.contains(words.text(at + 1))) {
            return Denials.noun(words, at + 2).map(noun -> until(at, noun.end(), noun));
        }
        if (words.text(at).matches("allergic|intolerant") && words.text(at + 1).equals("to")) {
            return Denials.noun(words, at + 2).map(noun -> until(at, noun.end(), noun));
        }
        return Denials.noun(words, at)
                .filter(noun -> ILLS.contains(words.text(noun.end())))
                .map(noun -> until(at, noun.end() + 1, noun));
    }

    private static Term until(int start, int end, Term noun) {
        return new Term(start, end, noun.denial(), noun.doubtful());
    }
}
