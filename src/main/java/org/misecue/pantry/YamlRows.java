package org.misecue.pantry;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;
import org.misecue.notice.StrictYaml;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.SequenceNode;

/** Reads a YAML list of rows, each with the line it begins on. Strict: whatever is not a known row stops the reading. */
final class YamlRows {

    /** A pantry of thousands of rows; more is a wrong file. */
    private static final int MOST_BYTES = 1_000_000;

    private YamlRows() {}

    /**
     * The rows of a file; none of an empty one.
     *
     * @throws BadInput at the first row that is not a mapping of the known keys
     */
    static List<YamlRow> read(String file, InputStream in, List<String> keys) {
        Optional<Node> root = StrictYaml.tree(
                file, text(file, in), mark -> Place.of(file, mark.getLine() + 1), "rows that begin with “- ”");
        if (root.isEmpty()) {
            return List.of();
        }
        if (!(root.get() instanceof SequenceNode list)) {
            throw new BadInput(Place.of(file, 1), "expected a list of rows that begin with “- ”.");
        }
        return list.getValue().stream()
                .map(node -> YamlRow.of(file, node, keys))
                .toList();
    }

    private static String text(String file, InputStream in) {
        try {
            byte[] bytes = in.readNBytes(MOST_BYTES + 1);
            if (bytes.length > MOST_BYTES) {
                throw new BadInput(Place.of(file), "a pantry takes less than 1 MB; shorten the file.");
            }
            return StrictYaml.text(file, bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(file, e);
        }
    }
}
