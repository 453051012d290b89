package org.misecue.search;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.lucene.document.Document;
import org.apache.lucene.document.Field;
import org.apache.lucene.document.StoredField;
import org.apache.lucene.document.StringField;
import org.apache.lucene.index.IndexReader;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.ScoreDoc;
import org.apache.lucene.search.TermQuery;

/**
 * What is called differently elsewhere: icing sugar, powdered sugar, confectioners' sugar. The groups are kept in the
 * index, so that a search need not read them anew.
 */
final class OtherNames {

    /** Names of more words are not looked for. */
    static final int MOST_WORDS = 4;

    private static final String KEY = "name";
    private static final String WORD = "nameWord";
    private static final String GROUP = "names";

    private OtherNames() {}

    /** The groups that were kept in one document each. */
    static List<Set<String>> groups(Query query, IndexSearcher searcher) throws IOException {
        List<Set<String>> groups = new ArrayList<>();
        for (ScoreDoc found : searcher.search(query, Math.max(1, searcher.count(query))).scoreDocs) {
            groups.add(Set.of(
                    searcher.storedFields().document(found.doc).get(GROUP).split("\n")));
        }
        return groups;
    }

    static List<Document> documents(List<Set<String>> groups) {
        return groups.stream().map(OtherNames::document).toList();
    }

    private static Document document(Set<String> group) {
        Document document = new Document();
        List<String> names = group.stream().sorted().toList();
        for (String name : names) {
            document.add(new StringField(KEY, key(Token.of(name)), Field.Store.NO));
            for (Token token : Token.of(name)) {
                document.add(new StringField(WORD, token.stem(), Field.Store.NO));
            }
        }
        document.add(new StoredField(GROUP, String.join("\n", names)));
        return document;
    }

    /** @return all names of the groups that have this one, without itself; none where there is no such group */
    static List<List<Token>> of(List<Token> name, IndexSearcher searcher) throws IOException {
        Term key = new Term(KEY, key(name));
        Set<List<Token>> others = new LinkedHashSet<>();
        if (searcher.getIndexReader().docFreq(key) == 0) {
            return List.of();
        }
        for (ScoreDoc found : searcher.search(new TermQuery(key), 10).scoreDocs) {
            List<List<Token>> names = searcher.storedFields()
                    .document(found.doc)
                    .get(GROUP)
                    .lines()
                    .map(Token::of)
                    .toList();
            if (names.stream().noneMatch(one -> isName(name, one))) {
                continue; // mashing bananas is no name for mashed banana
            }
            names.stream()
                    .filter(other -> !other.isEmpty() && !key(other).equals(key.text()))
                    .forEach(others::add);
        }
        return List.copyOf(others);
    }

    /** In any form, but what is done only where the name has just that. */
    private static boolean isName(List<Token> asked, List<Token> name) {
        return key(asked).equals(key(name))
                && IntStream.range(0, asked.size())
                        .filter(i -> asked.get(i).isDoing())
                        .allMatch(i -> asked.get(i).word().equals(name.get(i).word()));
    }

    /** Whether the word is part of a name, and so is not misspelt. */
    static boolean knows(Token word, IndexReader reader) throws IOException {
        return reader.docFreq(new Term(WORD, word.stem())) > 0;
    }

    private static String key(List<Token> name) {
        return name.stream().map(Token::stem).collect(Collectors.joining(" "));
    }
}
