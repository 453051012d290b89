package org.misecue.search;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.lucene.document.Document;
import org.apache.lucene.document.Field;
import org.apache.lucene.document.FieldType;
import org.apache.lucene.document.LongPoint;
import org.apache.lucene.document.StoredField;
import org.apache.lucene.document.StringField;
import org.apache.lucene.index.IndexOptions;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.TermQuery;
import org.apache.lucene.store.ByteArrayDataInput;
import org.apache.lucene.store.ByteBuffersDataOutput;
import org.apache.lucene.util.BytesRef;

/** A {@link Window} as Lucene keeps it, and back. */
final class WindowDocument {

    private static final String STEP = "step";

    /** What an amount is found by. */
    static final String AMOUNT = "amount";

    /** What an amount of something is found by. */
    static final String OF = "of";

    private static final String SPEAKER_WORD = "speakerWord";
    private static final String TOPIC = "topic";
    private static final String KIND = "kind";
    private static final String SOURCE = "source";
    private static final String START = "start";
    private static final String END = "end";
    private static final String SPEAKER = "speaker";
    private static final String TEXT = "text";
    private static final String OWN_LENGTH = "own";
    private static final String TEXT_END = "textEnd";
    private static final String TIMES = "times";
    private static final String AMOUNTS = "amounts";
    private static final FieldType INDEXED = indexed();

    private WindowDocument() {}

    static Document of(Window window) {
        Passage passage = window.passage();
        Document document = new Document();
        document.add(new Field(Terms.FIELD, new TermStream(Token.of(window.text())), INDEXED));
        document.add(new StringField(STEP, Integer.toString(passage.step()), Field.Store.YES));
        document.add(new StringField(KIND, passage.kind().name(), Field.Store.YES));
        document.add(new StoredField(SOURCE, passage.source()));
        document.add(new StoredField(START, passage.start().toMillis()));
        document.add(new StoredField(END, passage.end().toMillis()));
        document.add(new LongPoint(START, passage.start().toMillis()));
        passage.speaker().ifPresent(speaker -> {
            document.add(new StoredField(SPEAKER, speaker));
            Token.of(speaker).forEach(word -> document.add(new StringField(SPEAKER_WORD, word.word(), Field.Store.NO)));
        });
        passage.topics().stream()
                .flatMap(topic -> terms(topic).stream())
                .distinct()
                .forEach(term -> document.add(new StringField(TOPIC, term, Field.Store.NO)));
        document.add(new StoredField(TEXT, window.text()));
        document.add(new StoredField(OWN_LENGTH, window.ownLength()));
        document.add(new StoredField(TEXT_END, window.textEnd().toMillis()));
        document.add(new StoredField(TIMES, packed(window.times())));
        window.amounts().stream()
                .map(Window.Amount::key)
                .distinct()
                .forEach(key -> document.add(new StringField(AMOUNT, key, Field.Store.NO)));
        for (Window.Amount amount : window.amounts()) {
            for (String name : amount.of()) {
                for (Token word : Token.of(name)) {
                    document.add(new StringField(OF, of(word, amount.key()), Field.Store.NO));
                }
            }
            document.add(new StoredField(AMOUNTS, amount.from() + "," + amount.to() + "," + amount.key()));
        }
        return document;
    }

    static Window window(Document document) {
        String text = document.get(TEXT);
        int ownLength = number(document, OWN_LENGTH).intValue();
        Passage passage = new Passage(
                Passage.Kind.valueOf(document.get(KIND)),
                document.get(SOURCE),
                time(document, START),
                time(document, END),
                text.substring(0, ownLength),
                Integer.parseInt(document.get(STEP)),
                Optional.ofNullable(document.get(SPEAKER)),
                List.of(),
                List.of(),
                Set.of());
        return new Window(
                passage,
                text,
                ownLength,
                time(document, TEXT_END),
                unpacked(document.getBinaryValue(TIMES)),
                Stream.of(document.getValues(AMOUNTS))
                        .map(WindowDocument::amount)
                        .toList());
    }

    private static List<String> terms(Topic topic) {
        return Token.of(topic.name()).stream()
                .map(word -> topic.kind() + " " + word.stem())
                .toList();
    }

    /** What the passages of a narrowing must be, all of it. */
    static List<Query> filters(Narrowing narrowing) {
        List<Query> filters = new ArrayList<>();
        narrowing.step().ifPresent(step -> filters.add(new TermQuery(step(step))));
        narrowing.topics().stream()
                .flatMap(topic -> terms(topic).stream())
                .forEach(term -> filters.add(new TermQuery(new Term(TOPIC, term))));
        narrowing.speakers().stream()
                .flatMap(name -> Token.of(name).stream())
                .forEach(word -> filters.add(new TermQuery(new Term(SPEAKER_WORD, word.word()))));
        if (narrowing.from().isPresent() || narrowing.to().isPresent()) {
            long from = narrowing.from().map(Duration::toMillis).orElse(Long.MIN_VALUE);
            long to = narrowing.to().map(time -> time.toMillis() - 1).orElse(Long.MAX_VALUE);
            filters.add(LongPoint.newRangeQuery(START, from, to));
        }
        return filters;
    }

    static Term kind(Passage.Kind kind) {
        return new Term(KIND, kind.name());
    }

    static Term step(int step) {
        return new Term(STEP, Integer.toString(step));
    }

    /** An amount of what the word is part of the name of. */
    static String of(Token word, String amount) {
        return word.stem() + " " + amount;
    }

    private static Window.Amount amount(String kept) {
        String[] parts = kept.split(",", 3);
        return new Window.Amount(parts[2], Integer.parseInt(parts[0]), Integer.parseInt(parts[1]), Set.of());
    }

    private static Duration time(Document document, String field) {
        return Duration.ofMillis(number(document, field).longValue());
    }

    private static Number number(Document document, String field) {
        return document.getField(field).numericValue();
    }

    /** How much later each word is than the one before: one or two bytes. */
    private static BytesRef packed(List<Long> times) {
        try {
            ByteBuffersDataOutput bytes = new ByteBuffersDataOutput();
            long before = 0;
            for (long time : times) {
                bytes.writeZLong(time - before);
                before = time;
            }
            return new BytesRef(bytes.toArrayCopy());
        } catch (IOException e) {
            throw new UncheckedIOException(e); // not into memory
        }
    }

    private static List<Long> unpacked(BytesRef packed) {
        ByteArrayDataInput bytes = new ByteArrayDataInput(packed.bytes, packed.offset, packed.length);
        List<Long> times = new ArrayList<>();
        try {
            long time = 0;
            while (!bytes.eof()) {
                time += bytes.readZLong();
                times.add(time);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e); // not from memory
        }
        return times;
    }

    private static FieldType indexed() {
        FieldType type = new FieldType();
        type.setTokenized(true);
        type.setIndexOptions(IndexOptions.DOCS_AND_FREQS_AND_POSITIONS);
        type.freeze();
        return type;
    }
}
