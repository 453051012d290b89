package org.misecue.decide;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import org.misecue.compare.Evidence;
import org.misecue.episode.Decision;
import org.misecue.episode.Decisions;
import org.misecue.narration.Moment;
import org.misecue.quantity.QuantityWriter;

/** The docket for other programs. Times are in seconds. */
public final class DocketJson {

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private DocketJson() {}

    public static String of(Docket docket) {
        ObjectNode document = NODES.objectNode();
        document.put("title", docket.title());
        document.put("undecided", docket.undecided().size());
        document.put("blocking", docket.blocking().size());
        ArrayNode matters = document.putArray("matters");
        docket.matters().forEach(one -> matters.add(matter(one)));
        ArrayNode fixes = document.putArray("fixes");
        FixList.fixes(docket).forEach(fix -> at(fixes.addObject(), fix.moment())
                .put("now", fix.now())
                .put("then", fix.then()));
        ArrayNode done = document.putArray("done");
        docket.done().forEach(one -> done.add(decision(one)));
        return document.toPrettyString() + "\n";
    }

    private static ObjectNode matter(Matter matter) {
        ObjectNode node = NODES.objectNode();
        node.put("about", matter.about());
        node.put("kind", matter.kind().id());
        node.put("what", matter.finding().what());
        node.put("reason", matter.finding().reason());
        node.put(
                "state",
                matter.state().name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'));
        node.put("blocks", matter.blocks());
        matter.decision().ifPresent(one -> node.set("decision", decision(one)));
        ArrayNode evidence = node.putArray("evidence");
        for (Evidence one : matter.finding().evidence()) {
            ObjectNode moment = at(evidence.addObject().put("via", one.via().code()), one.moment());
            one.quantity().ifPresent(amount -> moment.put("told", QuantityWriter.text(amount)));
            moment.put("quote", one.quote());
        }
        return node;
    }

    private static ObjectNode at(ObjectNode node, Moment moment) {
        return node.put("source", moment.source())
                .put("at", BigDecimal.valueOf(moment.at().toMillis(), 3));
    }

    private static ObjectNode decision(Decision one) {
        return NODES.objectNode()
                .put("about", one.about())
                .put("decision", one.choice().code())
                .put("by", one.who())
                .put("when", Decisions.minute(one.when()).replace(' ', 'T'))
                .put("note", one.note());
    }
}
