package org.misecue.search;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.lucene.document.Document;

/** Everything that can be found of an episode, as Lucene keeps it. */
final class EpisodeDocuments {

    private EpisodeDocuments() {}

    /** One after the other: Lucene takes a document before the next is asked for. */
    static Stream<Document> of(List<Passage> passages, List<Set<String>> otherNames) {
        WindowDocument document = new WindowDocument();
        return Stream.concat(
                Window.over(passages).stream().map(document::of), OtherNames.documents(otherNames).stream());
    }
}
