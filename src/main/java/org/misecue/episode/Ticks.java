package org.misecue.episode;

import java.util.Collection;
import java.util.Collections;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.misecue.notice.BadInput;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/**
 * The ticks on one of an episode's lists, kept in {@code .misecue/}. A tick is what was ticked, in words with its amount or
 * its place, so that it survives a re-run and means nothing once that changes.
 */
public final class Ticks {

    private static final String PREP_HEAD = "# What is ticked off. Kept by misecue prep --tick and --untick.\n";
    private static final String DAY_HEAD = "# Rows of the call sheet that are done. Kept by misecue desk.\n";

    private final StateFile file;
    private final String head;

    private Ticks(Episode episode, String file, String head) {
        this.file = new StateFile(episode, file);
        this.head = head;
    }

    /** Those on bowls and jobs. */
    public Ticks(Episode episode) {
        this(episode, "ticks.yaml", PREP_HEAD);
    }

    /** Those on the rows of the filming day. */
    public static Ticks ofDay(Episode episode) {
        return new Ticks(episode, "done.yaml", DAY_HEAD);
    }

    /** @throws BadInput if the file is no list of texts */
    public Set<String> read() {
        Set<String> ticks = new TreeSet<>();
        file.read("- a line for each tick").ifPresent(tree -> addAll(tree, ticks));
        return Collections.unmodifiableSet(ticks);
    }

    /**
     * Puts and takes ticks, safe from another run that does the same; what is no longer on the lists goes.
     *
     * @param standing everything that is on the lists now
     */
    public void change(Collection<String> put, Collection<String> taken, Collection<String> standing) {
        file.change(
                this::read,
                before -> {
                    Set<String> ticks = new TreeSet<>(before);
                    ticks.addAll(put);
                    ticks.removeAll(taken);
                    ticks.retainAll(standing);
                    return ticks;
                },
                ticks -> ticks.stream()
                        .map(tick -> "- " + YamlText.quoted(tick) + "\n")
                        .collect(Collectors.joining("", head, "")));
    }

    private void addAll(Node tree, Set<String> ticks) {
        if (!(tree instanceof SequenceNode list)) {
            throw wrong(tree);
        }
        for (Node node : list.getValue()) {
            if (!(node instanceof ScalarNode text)) {
                throw wrong(node);
            }
            ticks.add(text.getValue());
        }
    }

    private BadInput wrong(Node node) {
        return new BadInput(file.at(node.getStartMark()), "expected a list of texts; mend it or delete the file.");
    }
}
