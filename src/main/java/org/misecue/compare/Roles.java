package org.misecue.compare;

import java.util.List;
import java.util.function.Predicate;
import org.misecue.compare.Mention.Role;

/** What an amount does to the amount that stood before it: states, adds, corrects, totals. The first rule that fits tells. */
final class Roles {

    private record Rule(Role role, Predicate<Further> fits) {}

    private final List<Rule> rules;

    Roles(Hearing heard) {
        Additions additions = new Additions(heard);
        Restarts restarts = new Restarts(heard);
        Restatements restatements = new Restatements(heard);
        LateRepairs late = new LateRepairs(heard);
        Products products = new Products(heard);
        this.rules = List.of(
                new Rule(Role.CORRECTS, amount -> products.isOne(amount.said(), amount.last())),
                new Rule(Role.RESTATES, new ShareOut(heard)::isPart),
                new Rule(Role.CORRECTS, additions::totals),
                new Rule(
                        Role.CORRECTS,
                        amount -> !additions.isMore(amount) && restarts.isReadOff(amount.said(), amount.last())),
                new Rule(Role.CORRECTS, additions::countsUp),
                new Rule(Role.ADDS, additions::adds),
                new Rule(Role.RESTATES, restatements::isInOtherWords),
                new Rule(Role.CORRECTS, restatements::isShare),
                new Rule(Role.CORRECTS, new Repairs(heard)::repairs),
                new Rule(Role.CORRECTS, restatements::narrows),
                new Rule(Role.CORRECTS, late::takesBack),
                new Rule(Role.CORRECTS, late::repairs),
                new Rule(Role.CORRECTS, restarts::restarts));
    }

    Role of(Further amount) {
        return rules.stream()
                .filter(rule -> rule.fits().test(amount))
                .map(Rule::role)
                .findFirst()
                .orElse(Role.STATES);
    }
}
