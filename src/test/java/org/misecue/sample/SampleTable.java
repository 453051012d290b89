package org.misecue.sample;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.RoundRectangle2D;
import java.util.Random;

/** The kitchen table from above, one scene per step. Hands and spoons move once a second, with the clock. */
final class SampleTable {

    private static final Color SHADOW = new Color(0, 0, 0, 40);
    private static final Color STEEL = new Color(0xb9c0c4);
    private static final Color STEEL_INSIDE = new Color(0xdfe4e6);
    private static final Color GLASS = new Color(0xcfe0df);
    private static final Color FLOUR = new Color(0xf7f1e3);
    private static final Color BATTER = new Color(0xf0d9a0);
    private static final Color BUTTER = new Color(0xf6dc84);
    private static final Color NUT = new Color(0xb07d4a);
    private static final Color CAKE = new Color(0xc98b4b);
    private static final Color CREAM = new Color(0xfbf5e6);
    private static final Color SKIN = new Color(0x6b2140);
    private static final Color FLESH = new Color(0xd9803f);
    private static final Color WOOD = new Color(0xa9744a);
    private static final double CX = 320;
    private static final double CY = 190;

    private final Graphics2D pen;

    SampleTable(Graphics2D pen) {
        this.pen = pen;
    }

    void draw(int step, int since, int frame) {
        int second = frame / SampleFilm.FRAMES_PER_SECOND;
        cloth(step);
        switch (step) {
            case 0 -> cakeOnStand();
            case 1 -> plumsInDish(since);
            case 2 -> linedTin(second);
            case 3 -> dryMix(second);
            case 4 -> creaming(since, second);
            case 5 -> eggs(since);
            case 6 -> folding(since, second);
            case 7 -> filledTin(since);
            case 8 -> cakeOnRack();
            default -> creamAndSlice(since, second);
        }
    }

    private void cloth(int step) {
        Color[] cloths = {new Color(0xe9c9b1), new Color(0xdcd3c2), new Color(0xc8d5cf), new Color(0xe6d3b8)};
        pen.setColor(cloths[step % cloths.length]);
        pen.fillRect(0, 0, SampleFilm.WIDTH, SampleFilm.HEIGHT);
        pen.setColor(cloths[step % cloths.length].darker());
        pen.setStroke(new BasicStroke(2));
        pen.drawLine(0, 344, SampleFilm.WIDTH, 344);
    }

    private void cakeOnStand() {
        disc(CX, CY + 10, 140, new Color(0xf4f1ea));
        cake(CX, CY + 10, 112);
    }

    private void plumsInDish(int since) {
        boolean roasted = since > 76;
        shadowed(new RoundRectangle2D.Double(150, 92, 340, 200, 40, 40), new Color(0x3d5a66));
        pen.setColor(new Color(0x547784));
        pen.fill(new RoundRectangle2D.Double(164, 104, 312, 176, 28, 28));
        int halves = Math.min(15, 3 + since / 2);
        for (int i = 0; i < halves; i++) {
            plum(200 + i % 5 * 60, 138 + i / 5 * 55, 24, roasted || since > 41);
        }
        disc(560, 130, 42, NUT);
        disc(560, 130, 32, new Color(0xd9972f));
        disc(560, 250, 34, new Color(0xf2d54b));
    }

    private void linedTin(int second) {
        disc(CX, CY, 128, STEEL);
        disc(CX, CY, 116, STEEL_INSIDE);
        disc(CX, CY, 104, CREAM);
        shadowed(new RoundRectangle2D.Double(436, 176, 40, 26, 8, 8), new Color(0x8d949a));
        turned(CX, CY, second * 40, () -> {
            pen.setColor(WOOD);
            pen.fill(new RoundRectangle2D.Double(CX - 8, CY - 100, 16, 60, 10, 10));
            pen.setColor(BUTTER);
            pen.fill(new Ellipse2D.Double(CX - 14, CY - 118, 28, 30));
        });
    }

    private void dryMix(int second) {
        bowl(CX, CY, 130, GLASS);
        disc(CX, CY, 100, FLOUR);
        speckles(CX, CY, 92, 160, NUT, 3);
        whisk(CX, CY, second * 50);
        bowl(546, 200, 52, STEEL);
        disc(546, 200, 36, new Color(0xd2a778));
    }

    private void creaming(int since, int second) {
        bowl(CX, CY, 132, STEEL);
        if (since < 20) {
            for (int i = 0; i < 7; i++) {
                turned(
                        CX,
                        CY,
                        i * 51,
                        () -> shadowed(new RoundRectangle2D.Double(CX + 22, CY - 18, 44, 36, 6, 6), BUTTER));
            }
        } else {
            disc(CX, CY, 98, since < 35 ? new Color(0xd9b26a) : new Color(0xf3e2b5));
            swirl(CX, CY, 84, new Color(0xc9a05a), second * 30);
        }
        bowl(540, 140, 50, GLASS);
        disc(540, 140, 34, new Color(0xfdfaf3));
        bowl(540, 262, 50, GLASS);
        disc(540, 262, 34, new Color(0x9a6a3a));
    }

    private void eggs(int since) {
        bowl(CX, CY, 132, STEEL);
        disc(CX, CY, 98, BATTER);
        int broken = Math.min(3, 1 + since / 5);
        for (int i = 0; i < broken; i++) {
            turned(CX, CY, i * 120 + 20, () -> {
                disc(CX, CY - 48, 32, new Color(0xfaf0d0));
                disc(CX, CY - 48, 17, new Color(0xf0a81f));
            });
        }
        for (int i = broken; i < 3; i++) {
            shadowed(new Ellipse2D.Double(524, 110 + i * 62, 42, 54), new Color(0xd8a57c));
        }
        disc(96, 210, 26, new Color(0x4a2a18));
    }

    private void folding(int since, int second) {
        bowl(CX, CY, 132, STEEL);
        disc(CX, CY, 100, BATTER);
        if (since < 8 || since > 20 && since < 28) {
            disc(CX + 20, CY - 14, 52, FLOUR);
        } else if (since < 14 || since > 27 && since < 34) {
            disc(CX - 24, CY + 16, 44, new Color(0xfdfbf2));
        }
        swirl(CX, CY, 78, new Color(0xd9b872), second * 25);
        turned(CX, CY, second * 45, () -> {
            pen.setColor(WOOD);
            pen.fill(new RoundRectangle2D.Double(CX - 7, CY - 170, 14, 120, 10, 10));
            pen.setColor(new Color(0xd64f3f));
            pen.fill(new RoundRectangle2D.Double(CX - 18, CY - 66, 36, 56, 16, 16));
        });
        bowl(556, 220, 46, GLASS);
        disc(556, 220, 32, new Color(0xfdfbf2));
    }

    private void filledTin(int since) {
        if (since > 30) {
            pen.setColor(new Color(0x4a2d22));
            pen.fillRect(0, 0, SampleFilm.WIDTH, SampleFilm.HEIGHT);
            pen.setColor(new Color(0xff9a3c));
            pen.fillRect(60, 70, 520, 6);
            pen.fillRect(60, 310, 520, 6);
        }
        disc(CX, CY, 122, STEEL);
        disc(CX, CY, 110, since > 36 ? CAKE : BATTER);
        int plums = Math.min(11, Math.max(0, since));
        for (int i = 0; i < plums; i++) {
            int outer = i;
            turned(CX, CY, i < 8 ? i * 45 : i * 120, () -> plum(CX, CY - (outer < 8 ? 76 : 28), 20, true));
        }
        if (since > 18) {
            speckles(CX, CY, 102, 60, NUT, 6);
        }
    }

    private void cakeOnRack() {
        pen.setColor(new Color(0x7d858a));
        pen.setStroke(new BasicStroke(3));
        for (int x = 150; x <= 490; x += 20) {
            pen.drawLine(x, 70, x, 320);
        }
        pen.drawRect(150, 70, 340, 250);
        cake(CX, CY, 110);
    }

    private void creamAndSlice(int since, int second) {
        if (since < 58) {
            bowl(CX, CY, 130, GLASS);
            disc(CX, CY, 100, CREAM);
            swirl(CX, CY, 82, since > 26 ? new Color(0xb98d55) : new Color(0xe4dac4), second * 30);
            if (since < 25) {
                whisk(CX, CY, second * 60);
            }
            bowl(548, 210, 44, GLASS);
            disc(548, 210, 30, since > 24 ? new Color(0xb98d55) : new Color(0xfdfdfb));
            return;
        }
        disc(CX, CY, 136, new Color(0xf6f3ec));
        disc(CX, CY, 100, new Color(0xfffdf8));
        pen.setColor(CAKE);
        pen.fill(new Arc2D.Double(CX - 150, CY - 60, 220, 180, -28, 56, Arc2D.PIE));
        plum(CX + 22, CY + 26, 20, true);
        disc(CX + 40, CY - 44, 34, CREAM);
        speckles(CX + 40, CY - 44, 26, 24, new Color(0xd8bd84), 3);
    }

    private void cake(double x, double y, double radius) {
        disc(x, y, radius, CAKE);
        for (int i = 0; i < 8; i++) {
            turned(x, y, i * 45, () -> plum(x, y - radius * 0.68, radius * 0.19, true));
        }
        for (int i = 0; i < 3; i++) {
            turned(x, y, i * 120, () -> plum(x, y - radius * 0.26, radius * 0.19, true));
        }
        speckles(x, y, radius * 0.92, 60, NUT, 6);
    }

    private void plum(double x, double y, double radius, boolean glossy) {
        disc(x, y, radius, SKIN);
        pen.setColor(glossy ? new Color(0xb64a3a) : FLESH);
        pen.fill(new Ellipse2D.Double(x - radius * 0.8, y - radius * 0.8, radius * 1.6, radius * 1.6));
        pen.setColor(glossy ? new Color(0x8f2f33) : new Color(0xb9602c));
        pen.fill(new Ellipse2D.Double(x - radius * 0.3, y - radius * 0.4, radius * 0.6, radius * 0.8));
    }

    private void bowl(double x, double y, double radius, Color colour) {
        disc(x, y, radius, colour);
        pen.setColor(colour.brighter());
        pen.fill(new Ellipse2D.Double(x - radius * 0.92, y - radius * 0.92, radius * 1.84, radius * 1.84));
        pen.setColor(colour);
        pen.fill(new Ellipse2D.Double(x - radius * 0.84, y - radius * 0.84, radius * 1.68, radius * 1.68));
    }

    private void whisk(double x, double y, double degrees) {
        turned(x, y, degrees, () -> {
            pen.setColor(WOOD);
            pen.fill(new RoundRectangle2D.Double(x - 6, y - 160, 12, 84, 10, 10));
            pen.setColor(new Color(0x7d858a));
            pen.setStroke(new BasicStroke(3));
            for (int width = 8; width <= 40; width += 16) {
                pen.draw(new Ellipse2D.Double(x - width / 2.0, y - 80, width, 76));
            }
        });
    }

    private void swirl(double x, double y, double radius, Color colour, double degrees) {
        Path2D line = new Path2D.Double();
        for (int i = 0; i <= 120; i++) {
            double angle = Math.toRadians(degrees + i * 8);
            double out = radius * i / 120;
            if (i == 0) {
                line.moveTo(x, y);
            }
            line.lineTo(x + out * Math.cos(angle), y + out * Math.sin(angle));
        }
        pen.setColor(colour);
        pen.setStroke(new BasicStroke(5, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        pen.draw(line);
    }

    private void speckles(double x, double y, double radius, int count, Color colour, double size) {
        Random places = new Random(7);
        pen.setColor(colour);
        for (int i = 0; i < count; i++) {
            double angle = places.nextDouble() * 2 * Math.PI;
            double out = Math.sqrt(places.nextDouble()) * radius;
            pen.fill(new Ellipse2D.Double(
                    x + out * Math.cos(angle) - size / 2, y + out * Math.sin(angle) - size / 2, size, size));
        }
    }

    private void disc(double x, double y, double radius, Color colour) {
        shadowed(new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius), colour);
    }

    private void shadowed(java.awt.Shape shape, Color colour) {
        pen.translate(3, 5);
        pen.setColor(SHADOW);
        pen.fill(shape);
        pen.translate(-3, -5);
        pen.setColor(colour);
        pen.fill(shape);
    }

    private void turned(double x, double y, double degrees, Runnable drawing) {
        AffineTransform before = pen.getTransform();
        pen.rotate(Math.toRadians(degrees), x, y);
        drawing.run();
        pen.setTransform(before);
    }
}
