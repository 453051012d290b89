package org.misecue.pantry;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
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
        Node root = compose(file, text(file, in));
        if (root == null) {
            return List.of();
        }
        if (!(root instanceof SequenceNode list)) {
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
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            throw new BadInput(Place.of(file), "the file is not text in UTF-8; save it as UTF-8.", e);
        } catch (IOException e) {
            throw new UncheckedIOException(file, e);
        }
    }

    private static @Nullable Node compose(String file, String yaml) {
        LoaderOptions options = new LoaderOptions();
        options.setMaxAliasesForCollections(10);
        options.setNestingDepthLimit(10);
        options.setAllowRecursiveKeys(false);
        try {
            return new Yaml(options).compose(new StringReader(yaml));
        } catch (MarkedYAMLException e) {
            Mark mark = e.getProblemMark();
            Place place = mark == null ? Place.of(file) : Place.of(file, mark.getLine() + 1);
            String problem = e.getProblem() == null ? "unreadable" : e.getProblem();
            throw new BadInput(
                    place,
                    "this is not YAML: " + problem.lines().findFirst().orElse("unreadable")
                            + "; mend the line, or put its value in quotes.",
                    e);
        } catch (YAMLException e) {
            throw new BadInput(
                    Place.of(file), "this is not YAML that can be read; write rows that begin with “- ”.", e);
        }
    }
}
