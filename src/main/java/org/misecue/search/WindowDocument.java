package org.misecue.search;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.apache.lucene.document.BinaryDocValuesField;
import org.apache.lucene.document.Document;
import org.apache.lucene.document.Field;
import org.apache.lucene.document.FieldType;
import org.apache.lucene.document.NumericDocValuesField;
import org.apache.lucene.document.StringField;
import org.apache.lucene.index.BinaryDocValues;
import org.apache.lucene.index.DocValues;
import org.apache.lucene.index.IndexOptions;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.index.ReaderUtil;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.TermQuery;

/** A {@link Window} as Lucene keeps it, and back. One after the other may be made, each to be taken by Lucene before the next. */
final class WindowDocument {

    /** What an amount is found by. */
    static final String AMOUNT = "amount";

    /** What an amount of something is found by. */
    static final String OF = "of";

    private static final String STEP = "step";
    private static final String SPEAKER_WORD = "speakerWord";
    private static final String TOPIC = "topic";
    private static final String KIND = "kind";
    private static final String START = "start";
    private static final String END = "end";
    private static final String WINDOW = "window";
    private static final FieldType INDEXED = indexed();

    private final TermStream words = new TermStream();
    private final WindowBytes bytes = new WindowBytes();

    Document of(Window window) {
        Passage passage = window.passage();
        Document document = new Document();
        byte[] text = window.text().getBytes(UTF_8);
        document.add(new Field(Terms.field(passage.kind()), words.over(window.text(), text), INDEXED));
        // Not squeezed as stored fields are: twice the bytes, and every passage looked at is there at once.
        document.add(new BinaryDocValuesField(WINDOW, bytes.of(window, text)));
        document.add(new NumericDocValuesField(STEP, passage.step()));
        document.add(new NumericDocValuesField(START, passage.start().toMillis()));
        document.add(new NumericDocValuesField(END, passage.end().toMillis()));
        if (passage.kind() != Passage.Kind.NARRATION) {
            document.add(new StringField(KIND, passage.kind().name(), Field.Store.NO));
        }
        if (passage.speaker().isPresent()) {
            for (Token word : Token.of(passage.speaker().get())) {
                document.add(new StringField(SPEAKER_WORD, word.word(), Field.Store.NO));
            }
        }
        if (!passage.topics().isEmpty()) {
            passage.topics().stream()
                    .flatMap(topic -> terms(topic).stream())
                    .distinct()
                    .forEach(term -> document.add(new StringField(TOPIC, term, Field.Store.NO)));
        }
        if (!window.amounts().isEmpty()) {
            addAmounts(window.amounts(), document);
        }
        return document;
    }

    private static void addAmounts(List<Window.Amount> amounts, Document document) {
        amounts.stream()
                .map(Window.Amount::key)
                .distinct()
                .forEach(key -> document.add(new StringField(AMOUNT, key, Field.Store.NO)));
        for (Window.Amount amount : amounts) {
            for (String name : amount.of()) {
                for (Token word : Token.of(name)) {
                    document.add(new StringField(OF, of(word, amount.key()), Field.Store.NO));
                }
            }
        }
    }

    /** @param document one that was made of a window */
    static Window window(IndexSearcher searcher, int document) throws IOException {
        List<LeafReaderContext> parts = searcher.getLeafContexts();
        LeafReaderContext part = parts.get(ReaderUtil.subIndex(document, parts));
        BinaryDocValues windows = DocValues.getBinary(part.reader(), WINDOW);
        windows.advanceExact(document - part.docBase);
        return WindowBytes.window(windows.binaryValue());
    }

    private static List<String> terms(Topic topic) {
        return Token.of(topic.name()).stream()
                .map(word -> topic.kind() + " " + word.stem())
                .toList();
    }

    /** What the passages of a narrowing must be, all of it. */
    static List<Query> filters(Narrowing narrowing) {
        List<Query> filters = new ArrayList<>();
        narrowing.step().ifPresent(step -> filters.add(step(step)));
        narrowing.topics().stream()
                .flatMap(topic -> terms(topic).stream())
                .forEach(term -> filters.add(new TermQuery(new Term(TOPIC, term))));
        narrowing.speakers().stream()
                .flatMap(name -> Token.of(name).stream())
                .forEach(word -> filters.add(new TermQuery(new Term(SPEAKER_WORD, word.word()))));
        if (narrowing.from().isPresent() || narrowing.to().isPresent()) {
            long from = narrowing.from().map(Duration::toMillis).orElse(Long.MIN_VALUE);
            long to = narrowing.to().map(time -> time.toMillis() - 1).orElse(Long.MAX_VALUE);
            filters.add(NumericDocValuesField.newSlowRangeQuery(START, Long.MIN_VALUE, to));
            filters.add(NumericDocValuesField.newSlowRangeQuery(END, from, Long.MAX_VALUE));
        }
        return filters;
    }

    /** What all of the kind have, but for narration. */
    static Term term(Passage.Kind kind) {
        return new Term(KIND, kind.name());
    }

    static Query step(int step) {
        return NumericDocValuesField.newSlowExactQuery(STEP, step);
    }

    /** An amount of what the word is part of the name of. */
    static String of(Token word, String amount) {
        return word.stem() + " " + amount;
    }

    private static FieldType indexed() {
        FieldType type = new FieldType();
        type.setTokenized(true);
        type.setIndexOptions(IndexOptions.DOCS_AND_FREQS_AND_POSITIONS);
        type.freeze();
        return type;
    }
}
