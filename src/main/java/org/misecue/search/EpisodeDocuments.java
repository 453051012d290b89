package org.misecue.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.apache.lucene.document.Document;

/** Everything that can be found of an episode, as Lucene keeps it. */
final class EpisodeDocuments {

    private EpisodeDocuments() {}

    static List<Document> of(List<Passage> passages, List<Set<String>> otherNames) {
        List<Document> documents = new ArrayList<>();
        Window.over(passages).forEach(window -> documents.add(WindowDocument.of(window)));
        documents.addAll(OtherNames.documents(otherNames));
        return documents;
    }
}
