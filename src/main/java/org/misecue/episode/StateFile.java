package org.misecue.episode;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;
import org.misecue.notice.StrictYaml;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.SequenceNode;

/** One YAML file of {@code .misecue/} that people may read, changed by one run at a time and written whole or not at all. */
final class StateFile {

    /** The lock of a file holds other processes off, and not another thread of this one. */
    private static final Object ONE_AT_A_TIME = new Object();

    private final OutFolder state;
    private final String file;

    StateFile(Episode episode, String file) {
        this.state = episode.state();
        this.file = file;
    }

    /** The file as the person knows it. */
    String name() {
        return state.name(file);
    }

    /**
     * @param example what lines of such a file look like
     * @throws BadInput if it is no YAML
     */
    Optional<Node> read(String example) {
        Path path = state.path(file);
        if (!Files.exists(path)) {
            return Optional.empty();
        }
        try {
            return StrictYaml.tree(name(), StrictYaml.text(name(), Files.readAllBytes(path)), this::at, example);
        } catch (IOException e) {
            throw new BadInput(Place.of(name()), "this cannot be read; free it or delete it.", e);
        }
    }

    /**
     * The file as a list of mappings; empty where there is none.
     *
     * @param what it is a list of: "decisions such as"
     * @param example what lines of such a file look like
     * @param keys that a mapping may have
     * @throws BadInput with its line where it is anything else
     */
    List<StrictMap> entries(String what, String example, List<String> keys) {
        List<StrictMap> entries = new ArrayList<>();
        read(example).ifPresent(tree -> {
            if (!(tree instanceof SequenceNode list)) {
                throw noList(tree, what, example);
            }
            for (Node node : list.getValue()) {
                if (!(node instanceof MappingNode map)) {
                    throw noList(node, what, example);
                }
                entries.add(new StrictMap(name(), "", map, keys));
            }
        });
        return entries;
    }

    private BadInput noList(Node node, String what, String example) {
        return new BadInput(
                at(node.getStartMark()),
                "expected a list of " + what + " " + example + "; mend it or delete the file.");
    }

    Place at(Mark mark) {
        return new Place(name(), mark.getLine() + 1, mark.getColumn() + 1);
    }

    /**
     * Changes what the file holds, safe from another run that does the same.
     *
     * @param read tells what it holds now
     * @param change makes the new from the old
     * @param write puts it into words
     */
    <T> T change(Supplier<T> read, UnaryOperator<T> change, Function<T, String> write) {
        synchronized (ONE_AT_A_TIME) {
            return changed(read, change, write);
        }
    }

    private <T> T changed(Supplier<T> read, UnaryOperator<T> change, Function<T, String> write) {
        Path lock = state.ready().resolve(file + ".lock");
        try (FileChannel channel = FileChannel.open(lock, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
                FileLock held = channel.lock()) {
            T changed = change.apply(read.get());
            state.write(file, write.apply(changed).getBytes(UTF_8));
            return changed;
        } catch (IOException e) {
            throw WholeFile.unwritable(name(), e);
        }
    }
}
