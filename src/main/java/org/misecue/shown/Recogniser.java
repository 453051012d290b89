package org.misecue.shown;

import static org.bytedeco.leptonica.global.leptonica.L_SEVERITY_NONE;
import static org.bytedeco.leptonica.global.leptonica.setMsgSeverity;
import static org.bytedeco.tesseract.global.tesseract.OEM_LSTM_ONLY;
import static org.bytedeco.tesseract.global.tesseract.RIL_SYMBOL;
import static org.bytedeco.tesseract.global.tesseract.RIL_WORD;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.bytedeco.javacpp.BytePointer;
import org.bytedeco.javacpp.IntPointer;
import org.bytedeco.tesseract.ResultIterator;
import org.bytedeco.tesseract.TessBaseAPI;
import org.misecue.footage.Grey;

/** Tesseract with the English language data. It is loaded with the first of these, and never without data. */
final class Recogniser implements AutoCloseable {

    /** How a picture is laid out, by Tesseract's numbers. */
    enum Layout {
        SCATTERED(11),
        ONE_LINE(7),
        ONE_SIGN(10);

        private final int mode;

        Layout(int mode) {
            this.mode = mode;
        }
    }

    /** Dots to the inch, as Tesseract wants to be told; letters are made as large as at this resolution in print. */
    private static final int RESOLUTION = 300;

    private static final String NOWHERE =
            System.getProperty("os.name", "").toLowerCase(Locale.ROOT).contains("win") ? "NUL" : "/dev/null";

    private final TessBaseAPI engine = new TessBaseAPI();

    private Recogniser() {}

    /** @throws UnusableData if the engine cannot use the data */
    static Recogniser open(LanguageData data) {
        setMsgSeverity(L_SEVERITY_NONE);
        Recogniser recogniser = new Recogniser();
        recogniser.engine.SetVariable("debug_file", NOWHERE);
        if (recogniser.engine.Init(data.folder().toString(), LanguageData.LANGUAGE, OEM_LSTM_ONLY) != 0) {
            recogniser.close();
            throw new UnusableData(data.folder());
        }
        recogniser.engine.SetVariable("debug_file", NOWHERE);
        recogniser.engine.SetVariable("tessedit_do_invert", "0");
        return recogniser;
    }

    /** The words of a picture with dark letters, in the order in which they are found. */
    List<Word> words(Grey picture, Layout layout) {
        return words(picture, layout, "");
    }

    /** @param only the signs that may be read; all where empty */
    List<Word> words(Grey picture, Layout layout, String only) {
        engine.SetVariable("tessedit_char_whitelist", only);
        // By its surroundings (Sauvola), because there is more in a part of a film than letters and their ground.
        engine.SetVariable("thresholding_method", layout == Layout.SCATTERED ? "2" : "0");
        engine.SetPageSegMode(layout.mode);
        engine.SetImage(picture.pixels(), picture.width(), picture.height(), 1, picture.width());
        engine.SetSourceResolution(RESOLUTION);
        List<Word> words = new ArrayList<>();
        if (engine.Recognize(null) == 0) {
            try (ResultIterator at = engine.GetIterator()) {
                if (at != null && !at.isNull()) {
                    collect(at, words);
                }
            }
        }
        engine.Clear();
        return words;
    }

    private static void collect(ResultIterator at, List<Word> words) {
        List<Word.Sign> signs = new ArrayList<>();
        Box word = null;
        float sure = 0;
        do {
            if (at.IsAtBeginningOf(RIL_WORD)) {
                if (word != null && !signs.isEmpty()) {
                    words.add(new Word(word, List.copyOf(signs), Math.round(sure)));
                }
                signs.clear();
                word = box(at, RIL_WORD);
                sure = at.Confidence(RIL_WORD);
            }
            try (BytePointer text = at.GetUTF8Text(RIL_SYMBOL)) {
                if (text != null && !text.isNull()) {
                    signs.add(new Word.Sign(
                            box(at, RIL_SYMBOL),
                            text.getString(StandardCharsets.UTF_8),
                            Math.round(at.Confidence(RIL_SYMBOL))));
                }
            }
        } while (at.Next(RIL_SYMBOL));
        if (word != null && !signs.isEmpty()) {
            words.add(new Word(word, List.copyOf(signs), Math.round(sure)));
        }
    }

    private static Box box(ResultIterator at, int level) {
        try (IntPointer sides = new IntPointer(4)) {
            at.BoundingBox(
                    level,
                    new IntPointer(sides.position(0)),
                    new IntPointer(sides.position(1)),
                    new IntPointer(sides.position(2)),
                    new IntPointer(sides.position(3)));
            sides.position(0);
            return new Box(sides.get(0), sides.get(1), sides.get(2), sides.get(3));
        }
    }

    @Override
    public void close() {
        engine.End();
        engine.deallocate();
    }
}
