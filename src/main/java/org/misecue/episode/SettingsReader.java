package org.misecue.episode;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.StringReader;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.Tag;

/** Reads {@code episode.yaml}. Only the tree is built, never objects, and a file that swells by aliases is refused. */
final class SettingsReader {

    private static final int MOST_BYTES = 256 * 1024;

    private SettingsReader() {}

    /** @throws BadInput with line and column where anything is not as it should be */
    static EpisodeSettings read(Path path, String file) {
        return read(contents(path, file), file);
    }

    static EpisodeSettings read(String yaml, String file) {
        Node root = compose(yaml, file);
        if (root == null || root.getTag().equals(Tag.NULL)) {
            return EpisodeSettings.DEFAULT;
        }
        if (root instanceof MappingNode mapping) {
            return new SettingsForm(file, mapping).settings();
        }
        throw new BadInput(
                Place.of(file, 1),
                "settings are written as “key: value”, one to a line; write for example title: Plum plait.");
    }

    private static String contents(Path path, String file) {
        try {
            if (Files.size(path) > MOST_BYTES) {
                throw new BadInput(
                        Place.of(file), "settings take a few lines, and this file has more than 256 KB; shorten it.");
            }
            return UTF_8.newDecoder()
                    .decode(ByteBuffer.wrap(Files.readAllBytes(path)))
                    .toString();
        } catch (CharacterCodingException e) {
            throw new BadInput(Place.of(file), "the file is not text in UTF-8; save it as UTF-8.", e);
        } catch (IOException e) {
            throw new BadInput(Place.of(file), "the file cannot be read; check that it is a file you may open.", e);
        }
    }

    private static @Nullable Node compose(String yaml, String file) {
        LoaderOptions options = new LoaderOptions();
        options.setMaxAliasesForCollections(10);
        options.setNestingDepthLimit(10);
        options.setAllowRecursiveKeys(false);
        try {
            return new Yaml(options).compose(new StringReader(yaml));
        } catch (MarkedYAMLException e) {
            Mark mark = e.getProblemMark();
            Place place = mark == null ? Place.of(file) : new Place(file, mark.getLine() + 1, mark.getColumn() + 1);
            throw new BadInput(
                    place, "this is not YAML: " + e.getProblem() + "; mend the line, or put its value in quotes.", e);
        } catch (YAMLException e) {
            throw new BadInput(Place.of(file), "this is not YAML that can be read; write “key: value” lines.", e);
        }
    }
}
