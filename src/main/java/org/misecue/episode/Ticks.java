package org.misecue.episode;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Collection;
import java.util.Collections;
import java.util.Set;
import java.util.TreeSet;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;
import org.misecue.notice.StrictYaml;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/**
 * The ticks on an episode's lists, kept in {@code .misecue/ticks.yaml}. A tick is what was ticked, in words with its
 * amount, so that it survives a re-run and means nothing once that changes.
 */
public final class Ticks {

    private static final String FILE = "ticks.yaml";
    private static final String NAME = ".misecue/" + FILE;
    private static final String HEAD = "# What is ticked off. Kept by misecue prep --tick and --untick.\n";

    private final OutFolder state;

    public Ticks(Episode episode) {
        this.state = episode.state();
    }

    /** @throws BadInput if the file is no list of texts */
    public Set<String> read() {
        Path file = state.path(FILE);
        if (!Files.exists(file)) {
            return Set.of();
        }
        try {
            String text = StrictYaml.text(NAME, Files.readAllBytes(file));
            Set<String> ticks = new TreeSet<>();
            StrictYaml.tree(NAME, text, Ticks::at, "- a line for each tick").ifPresent(tree -> addAll(tree, ticks));
            return Collections.unmodifiableSet(ticks);
        } catch (IOException e) {
            throw new BadInput(Place.of(NAME), "this cannot be read; free it or delete it.", e);
        }
    }

    /**
     * Puts and takes ticks, safe from another run that does the same; what is no longer on the lists goes.
     *
     * @param standing everything that is on the lists now
     */
    public void change(Collection<String> put, Collection<String> taken, Collection<String> standing) {
        Path lock = state.ready().resolve("ticks.lock");
        try (FileChannel channel = FileChannel.open(lock, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
                FileLock held = channel.lock()) {
            Set<String> ticks = new TreeSet<>(read());
            ticks.addAll(put);
            ticks.removeAll(taken);
            ticks.retainAll(standing);
            StringBuilder out = new StringBuilder(HEAD);
            ticks.forEach(tick -> out.append("- ").append(quoted(tick)).append('\n'));
            state.write(FILE, out.toString().getBytes(UTF_8));
        } catch (IOException e) {
            throw WholeFile.unwritable(NAME, e);
        }
    }

    private static void addAll(Node tree, Set<String> ticks) {
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

    private static BadInput wrong(Node node) {
        return new BadInput(at(node.getStartMark()), "expected a list of texts; mend it or delete the file.");
    }

    private static Place at(Mark mark) {
        return new Place(NAME, mark.getLine() + 1, mark.getColumn() + 1);
    }

    private static String quoted(String text) {
        return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"").replaceAll("\\R", " ") + "\"";
    }
}
