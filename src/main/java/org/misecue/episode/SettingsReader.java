package org.misecue.episode;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;
import org.misecue.notice.StrictYaml;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.Tag;

/** Reads {@code episode.yaml}. */
final class SettingsReader {

    private static final int MOST_BYTES = 256 * 1024;

    private SettingsReader() {}

    /** @throws BadInput with line and column where anything is not as it should be */
    static EpisodeSettings read(Path path, String file) {
        return read(contents(path, file), file);
    }

    static EpisodeSettings read(String yaml, String file) {
        Optional<Node> root = StrictYaml.tree(
                file, yaml, mark -> new Place(file, mark.getLine() + 1, mark.getColumn() + 1), "“key: value” lines");
        if (root.isEmpty() || root.get().getTag().equals(Tag.NULL)) {
            return EpisodeSettings.DEFAULT;
        }
        if (root.get() instanceof MappingNode mapping) {
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
            return StrictYaml.text(file, Files.readAllBytes(path));
        } catch (IOException e) {
            throw new BadInput(Place.of(file), "the file cannot be read; check that it is a file you may open.", e);
        }
    }
}
