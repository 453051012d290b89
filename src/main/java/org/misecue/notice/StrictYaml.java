package org.misecue.notice;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.StringReader;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.util.Optional;
import java.util.function.Function;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.events.AliasEvent;
import org.yaml.snakeyaml.events.CollectionEndEvent;
import org.yaml.snakeyaml.events.CollectionStartEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.nodes.Node;

/** What people write as YAML. Only the tree is built, never objects, and a file that swells by aliases is refused. */
public final class StrictYaml {

    private static final int DEEPEST = 10;
    private static final int MOST_ALIASES = 10;

    private StrictYaml() {}

    /** @throws BadInput if the bytes are no UTF-8 */
    public static String text(String file, byte[] bytes) {
        try {
            return UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
        } catch (CharacterCodingException e) {
            throw new BadInput(Place.of(file), "the file is not text in UTF-8; save it as UTF-8.", e);
        }
    }

    /**
     * The tree; empty where nothing is written.
     *
     * @param where how exactly a place of the file is told
     * @param example what lines of such a file look like
     * @throws BadInput if it is no YAML, or nested or repeated beyond reason
     */
    public static Optional<Node> tree(String file, String yaml, Function<Mark, Place> where, String example) {
        LoaderOptions options = new LoaderOptions();
        options.setMaxAliasesForCollections(MOST_ALIASES);
        options.setNestingDepthLimit(DEEPEST);
        options.setAllowRecursiveKeys(false);
        try {
            return Optional.ofNullable(new Yaml(options).compose(new StringReader(yaml)));
        } catch (MarkedYAMLException e) {
            Place place = Optional.ofNullable(e.getProblemMark()).map(where).orElse(Place.of(file));
            String problem = Optional.ofNullable(e.getProblem())
                    .flatMap(words -> words.lines().findFirst())
                    .orElse("unreadable");
            throw new BadInput(
                    place, "this is not YAML: " + problem + "; mend the line, or put its value in quotes.", e);
        } catch (YAMLException e) {
            Place place = excess(yaml, options).map(where).orElse(Place.of(file));
            throw new BadInput(place, "this is not YAML that can be read; write " + example + ".", e);
        }
    }

    /** Where it is first nested or repeated beyond reason, which the library does not tell. */
    private static Optional<Mark> excess(String yaml, LoaderOptions options) {
        int depth = 0;
        int aliases = 0;
        try {
            for (Event event : new Yaml(options).parse(new StringReader(yaml))) {
                depth += event instanceof CollectionStartEvent ? 1 : event instanceof CollectionEndEvent ? -1 : 0;
                aliases += event instanceof AliasEvent ? 1 : 0;
                if (depth > DEEPEST || aliases > MOST_ALIASES) {
                    return Optional.of(event.getStartMark());
                }
            }
        } catch (YAMLException e) {
            return Optional.empty();
        }
        return Optional.empty();
    }
}
