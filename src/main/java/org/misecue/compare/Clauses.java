package org.misecue.compare;

import java.util.Set;
import org.misecue.spoken.NameHit;
import org.misecue.spoken.Words;

/** Clauses that only tell about the thing that is measured; what they name is named in passing. */
final class Clauses {

    private static final int RELATIVE_REACH = 6;
    private static final int PURPOSE_REACH = 4;
    private static final Set<String> RELATIVE = Words.set("which that one ones what sort kind");
    private static final Set<String> SUBJECTS = Words.set("we you i they people everybody everyone she he");
    private static final Set<String> INTO = Set.of("in", "into", "on", "to", "for", "over");

    /** What people are about to do is done now: "we want to add the milk", "I'm going to use". */
    private static final Set<String> BEFORE_DOING =
            Words.set("going want wants need needs have has got like time try ready next add go gonna remember forget "
                    + "best better nice good easy easier important how love able supposed sure way");

    private static final Set<String> THE = Set.of("the", "your", "my", "our");
    private static final Set<String> CAUSING = Words.set("makes make helps help lets let wakes keeps");
    private static final Set<String> AIMS = Words.set("thing trick step job secret way idea plan");
    private static final Set<String> DOING = Words.set(
            "add use take put pour weigh tip go start begin get have do mix stir measure remember know worry learn say see "
                    + "think look wait rest argue lose spare hurry the a your my our this that it "
                    + "and room for with");
    private static final Set<String> OPENING = Words.set("and now then so right okay next first");
    private static final Set<String> BEHIND_REFUSED = Words.set("please thanks here today for in and or from ever");
    private static final Set<String> NOT_REFUSING =
            Words.set("sorry hang hold wait it that i is actually so then and more need the a not no");

    private Clauses() {}

    /** "no shop bought powder please": what stays out, whatever it is called. */
    static boolean isRefused(NameHit name, Hearing heard) {
        int at = name.start() - 1;
        return !heard.words.border(name.start())
                && !heard.words.border(at)
                && heard.words.text(at - 1).equals("no")
                && BEHIND_REFUSED.contains(heard.words.text(name.end()))
                && !NOT_REFUSING.contains(heard.words.text(at));
    }

    /** "it's only there to make the soda jump": what the measured thing is for. */
    static boolean isPurpose(NameHit name, Hearing heard) {
        if (heard.words.border(name.start())) {
            return false;
        }
        boolean the = THE.contains(heard.words.text(name.start() - 1));
        if (the && CAUSING.contains(heard.words.text(name.start() - 2))) {
            return true;
        }
        int to = lastTo(name.start(), heard);
        boolean verb = the || to == name.start() - 2;
        return to < name.start() && verb && isPurpose(to, heard);
    }

    /** The "to" within reach of a name, in its clause; the name itself where there is none. */
    private static int lastTo(int name, Hearing heard) {
        for (int at = name - 2; at >= name - PURPOSE_REACH && !heard.words.border(at + 1); at--) {
            if (heard.words.text(at).equals("to")) {
                return at;
            }
        }
        return name;
    }

    /** "to make", behind words that don't tell what is done now: "I'm going to add" is no purpose. */
    private static boolean isPurpose(int to, Hearing heard) {
        String before = heard.words.text(to - 1);
        boolean aim = before.equals("is") && AIMS.contains(heard.words.text(to - 2));
        return !heard.words.border(to)
                && !DOING.contains(heard.words.text(to + 1))
                && !BEFORE_DOING.contains(before)
                && !OPENING.contains(before)
                && !aim;
    }

    /** "the one we put in milk in summer": what is done with it on other days. */
    static boolean isTold(NameHit name, Hearing heard) {
        if (!INTO.contains(heard.words.text(name.start() - 1))) {
            return false;
        }
        for (int at = name.start() - 2; at > name.start() - RELATIVE_REACH && !heard.words.border(at); at--) {
            if (SUBJECTS.contains(heard.words.text(at)) && RELATIVE.contains(heard.words.text(at - 1))) {
                return true;
            }
        }
        return false;
    }
}
