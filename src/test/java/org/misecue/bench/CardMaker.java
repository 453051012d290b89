package org.misecue.bench;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.io.InputStream;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.PDDocument;

/** Invents films with cards from a seed: the same seed and the same fonts give the same films. */
final class CardMaker {

    private static final List<String> FAMILIES = List.of(
            "DejaVu Sans", "DejaVu Serif", "DejaVu Sans Condensed", "DejaVu Serif Condensed", "DejaVu Sans Mono");
    private static final int[][] SIZES = {{640, 360}, {854, 480}, {1280, 720}, {1920, 1080}};
    private static final double[] QUALITIES = {0.04, 0.07, 0.12, 0.2};
    private static final List<String> FOODS = List.of(
            "plain flour",
            "caster sugar",
            "soft butter",
            "whole milk",
            "ground almonds",
            "light brown sugar",
            "rolled oats",
            "double cream",
            "golden syrup",
            "dark chocolate",
            "rye flour",
            "cornflour",
            "honey",
            "strong white flour",
            "desiccated coconut",
            "cold water",
            "sunflower oil",
            "mashed banana");
    private static final List<String> SPICES = List.of(
            "baking powder",
            "fine salt",
            "ground ginger",
            "vanilla extract",
            "cinnamon",
            "bicarbonate of soda",
            "instant yeast",
            "lemon juice",
            "nutmeg",
            "cardamom",
            "orange zest");
    private static final List<String> TITLES = List.of(
            "Pear and oat slice",
            "Rye buns with seeds",
            "The filling",
            "For the dough",
            "Ginger crumble cake",
            "Plum traybake",
            "Shape and prove",
            "Cool on a rack",
            "Lemon curd tart");
    private static final String[] FRACTIONS = {"½", "¼", "¾", "⅓", "⅛", "1/2", "1/4", "3/4"};

    private final Random random;
    private final List<Font> fonts;

    CardMaker(long seed) {
        random = new Random(seed);
        fonts = fonts();
    }

    private static List<Font> fonts() {
        List<String> here =
                List.of(GraphicsEnvironment.getLocalGraphicsEnvironment().getAvailableFontFamilyNames());
        List<Font> fonts = new ArrayList<>();
        fonts.add(liberation());
        fonts.add(liberation());
        for (String family : FAMILIES) {
            if (here.contains(family)) {
                fonts.add(new Font(family, Font.PLAIN, 12));
                fonts.add(new Font(family, Font.BOLD, 12));
            }
        }
        return fonts;
    }

    private static Font liberation() {
        try (InputStream in =
                PDDocument.class.getResourceAsStream("/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf")) {
            return Font.createFont(Font.TRUETYPE_FONT, in);
        } catch (IOException | FontFormatException e) {
            throw new IllegalStateException("the font in PDFBox cannot be read", e);
        }
    }

    /** Films with two cards and three, one after the other, some of them at the same time. */
    List<CardFilm> films(int count) {
        List<CardFilm> films = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            films.add(film("film-%02d".formatted(i), i));
        }
        return films;
    }

    private CardFilm film(String name, int number) {
        int[] size = SIZES[number % SIZES.length];
        CardFilm.Picture picture = CardFilm.Picture.values()[number % CardFilm.Picture.values().length];
        List<CardTruth> cards = new ArrayList<>();
        double time = 0.6 + random.nextDouble();
        int many = 2 + random.nextInt(2);
        for (int i = 0; i < many; i++) {
            double lasts = 2.5 + 2 * random.nextDouble();
            cards.add(card(picture, time, time + lasts));
            time += lasts + (random.nextInt(3) == 0 ? 0.04 : 0.5 + random.nextDouble());
        }
        double rate = random.nextBoolean() ? 25 : 30000.0 / 1001;
        double quality = pick(QUALITIES);
        return new CardFilm(
                name, size[0], size[1], rate, quality, picture, random.nextInt(1_000_000), millis(time + 0.8), cards);
    }

    private CardTruth card(CardFilm.Picture picture, double from, double to) {
        Font font = fonts.get(random.nextInt(fonts.size()));
        CardTruth.Look look = pick(CardTruth.Look.values());
        List<String> lines = new ArrayList<>();
        double height;
        double y;
        boolean centred = random.nextInt(3) == 0;
        switch (random.nextInt(4)) {
            case 0 -> {
                lines.add(random.nextInt(4) == 0 ? setting() : ingredient());
                height = 0.055 + 0.03 * random.nextDouble();
                y = 0.84;
            }
            case 1 -> {
                lines.add(pick(TITLES));
                Stream.generate(this::ingredient).limit(2 + random.nextInt(4)).forEach(lines::add);
                height = 0.05 + 0.015 * random.nextDouble();
                y = 0.2 + 0.1 * random.nextDouble();
            }
            case 2 -> {
                lines.add(pick(TITLES));
                lines.add(setting());
                height = 0.07 + 0.04 * random.nextDouble();
                y = 0.4;
            }
            default -> {
                lines.add(ingredient());
                lines.add(random.nextBoolean() ? ingredient() : setting());
                height = 0.055 + 0.02 * random.nextDouble();
                y = 0.76;
            }
        }
        double x = centred ? 0.5 : 0.07 + 0.15 * random.nextDouble();
        return new CardTruth(List.copyOf(lines), font, look, height, centred, x, y, millis(from), millis(to));
    }

    private String ingredient() {
        String food = pick(FOODS);
        return switch (random.nextInt(9)) {
            case 0, 1, 2 -> grams() + pick(" g ", "g ") + food;
            case 3 ->
                pick("75", "120", "150", "250", "330", "500") + " ml "
                        + pick("whole milk", "cold water", "double cream", "sunflower oil");
            case 4 -> pick(FRACTIONS) + " tsp " + pick(SPICES);
            case 5 -> pick("1", "2", "3") + pick("½", "¼", "¾", " 1/2") + pick(" tsp ", " tbsp ") + pick(SPICES);
            case 6 -> pick("1", "2", "3", "4") + pick(" tsp ", " tbsp ") + pick(SPICES);
            case 7 -> pick("2–3", "1–2", "4–5") + " tbsp " + food;
            default ->
                random.nextBoolean()
                        ? "2 × 400 g " + pick("tins pears", "tins plums")
                        : pick(FRACTIONS) + " cup " + food;
        };
    }

    private String grams() {
        return Integer.toString(random.nextInt(3) == 0 ? 5 * (1 + random.nextInt(20)) : 25 * (1 + random.nextInt(30)));
    }

    private String setting() {
        return switch (random.nextInt(4)) {
            case 0 -> "Oven " + (140 + 10 * random.nextInt(10)) + pick(" °C", "°C");
            case 1 -> "Bake " + pick("25–30", "12–15", "35", "45–50", "8–10") + " min";
            case 2 ->
                pick("Prove", "Chill", "Rest") + " " + pick("1 hour", "30 minutes", "2 hours", "1½ hours", "45 min");
            default -> (150 + 10 * random.nextInt(9)) + "°C / gas mark " + (3 + random.nextInt(5));
        };
    }

    private double pick(double[] of) {
        return of[random.nextInt(of.length)];
    }

    @SafeVarargs
    private final <T> T pick(T... of) {
        return of[random.nextInt(of.length)];
    }

    private <T> T pick(List<T> of) {
        return of.get(random.nextInt(of.size()));
    }

    private static Duration millis(double seconds) {
        return Duration.ofMillis(Math.round(seconds * 1000));
    }
}
