package org.misecue.bench;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.nio.ByteBuffer;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Random;
import org.bytedeco.ffmpeg.global.avcodec;
import org.bytedeco.ffmpeg.global.avutil;
import org.bytedeco.javacv.FFmpegFrameRecorder;
import org.bytedeco.javacv.Frame;

/** A short invented film with cards over a picture that moves. */
public record CardFilm(
        String name,
        int width,
        int height,
        double rate,
        double bitsPerPixel,
        Picture picture,
        long seed,
        Duration length,
        List<CardTruth> cards) {

    /** What goes on behind the cards. */
    public enum Picture {
        PANNING,
        BRIGHT,
        NOISY,
        STILL_WITH_HANDS,
        QUIET
    }

    public void write(Path file) {
        avutil.av_log_set_level(avutil.AV_LOG_QUIET);
        BufferedImage ground = ground();
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_3BYTE_BGR);
        try (FFmpegFrameRecorder recorder = new FFmpegFrameRecorder(file.toFile(), width, height, 0)) {
            recorder.setFormat("mp4");
            recorder.setVideoCodec(avcodec.AV_CODEC_ID_H264);
            recorder.setVideoCodecName("libopenh264");
            recorder.setVideoOption("threads", "1");
            recorder.setVideoOption("allow_skip_frames", "0");
            recorder.setPixelFormat(avutil.AV_PIX_FMT_YUV420P);
            recorder.setFrameRate(rate);
            recorder.setGopSize(50);
            recorder.setVideoBitrate((int) (bitsPerPixel * width * height * rate));
            recorder.start();
            int frames = (int) Math.round(length.toMillis() / 1000.0 * rate);
            for (int number = 0; number < frames; number++) {
                long micros = Math.round(number * 1_000_000.0 / rate);
                paint(image, ground, micros / 1e6);
                recorder.setTimestamp(micros);
                recorder.record(frame(image), avutil.AV_PIX_FMT_BGR24);
            }
            recorder.stop();
        } catch (org.bytedeco.javacv.FrameRecorder.Exception e) {
            throw new IllegalStateException(e);
        }
    }

    private Frame frame(BufferedImage image) {
        Frame frame = new Frame(width, height, Frame.DEPTH_UBYTE, 3);
        byte[] pixels = ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
        ByteBuffer target = (ByteBuffer) frame.image[0];
        for (int y = 0; y < height; y++) {
            target.put(y * frame.imageStride, pixels, y * width * 3, width * 3);
        }
        return frame;
    }

    /** A worktop with things on it, larger than the picture, so that it can be moved under it. */
    private BufferedImage ground() {
        Random random = new Random(seed);
        int wide = width * 3 / 2;
        int high = height * 3 / 2;
        BufferedImage ground = new BufferedImage(wide, high, BufferedImage.TYPE_3BYTE_BGR);
        Graphics2D pen = smooth(ground);
        boolean bright = picture == Picture.BRIGHT;
        pen.setColor(colour(random, bright));
        pen.fillRect(0, 0, wide, high);
        int things = picture == Picture.QUIET ? 25 : 160;
        for (int i = 0; i < things; i++) {
            pen.setColor(colour(random, bright));
            int size = (int) (height * (0.02 + 0.25 * random.nextDouble() * random.nextDouble()));
            int x = random.nextInt(wide) - size / 2;
            int y = random.nextInt(high) - size / 2;
            switch (random.nextInt(3)) {
                case 0 -> pen.fillOval(x, y, size * 3 / 2, size);
                case 1 -> pen.fillRoundRect(x, y, size, size, size / 3, size / 3);
                default -> {
                    pen.setStroke(new BasicStroke(Math.max(1, size / 12f)));
                    pen.drawArc(x, y, size * 2, size * 2, random.nextInt(360), 90 + random.nextInt(200));
                }
            }
        }
        pen.dispose();
        grain(ground, random, picture == Picture.NOISY ? 40 : 8);
        return ground;
    }

    private static Color colour(Random random, boolean bright) {
        int least = bright ? 170 : 20;
        int room = bright ? 86 : 210;
        return new Color(
                least + random.nextInt(room), least + random.nextInt(room), least + random.nextInt(room) * 3 / 4);
    }

    private static void grain(BufferedImage image, Random random, int size) {
        byte[] pixels = ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
        for (int i = 0; i < pixels.length; i += 3) {
            int by = random.nextInt(2 * size + 1) - size;
            for (int c = i; c < i + 3; c++) {
                pixels[c] = (byte) Math.max(0, Math.min(255, (pixels[c] & 0xff) + by));
            }
        }
    }

    private void paint(BufferedImage image, BufferedImage ground, double time) {
        Graphics2D pen = smooth(image);
        boolean still = picture == Picture.STILL_WITH_HANDS;
        double sway = still ? 0 : 1;
        int x = (int) (width / 4.0 * (1 + sway * Math.sin(time * 0.9 + seed % 7)));
        int y = (int) (height / 4.0 * (1 + sway * Math.cos(time * 0.7)));
        if (picture == Picture.NOISY) {
            Random shake = new Random(seed + (long) (time * 1000));
            x = Math.floorMod(x + shake.nextInt(9) - 4, width / 2);
            y = Math.floorMod(y + shake.nextInt(9) - 4, height / 2);
        }
        pen.drawImage(ground, -x, -y, null);
        Random random = new Random(seed + 1);
        for (int i = 0; i < (still ? 3 : 8); i++) {
            pen.setColor(colour(random, picture == Picture.BRIGHT));
            double speed = 0.3 + random.nextDouble();
            double phase = random.nextDouble() * 6;
            int cx = (int) (width * (0.5 + 0.55 * Math.sin(time * speed + phase)));
            int cy = (int) (height * (0.5 + 0.45 * Math.sin(time * speed * 1.3 + phase * 2)));
            int size = (int) (height * (0.05 + 0.2 * random.nextDouble()));
            pen.fillOval(cx - size / 2, cy - size / 2, size, size * 3 / 4);
        }
        Duration now = Duration.ofNanos((long) (time * 1e9));
        for (CardTruth card : cards) {
            if (card.at(now)) {
                paint(pen, card);
            }
        }
        pen.dispose();
    }

    private void paint(Graphics2D pen, CardTruth card) {
        float size = (float) (card.height() * height);
        pen.setFont(card.font().deriveFont(size));
        double step = size * 1.35;
        double widest = card.lines().stream()
                .mapToDouble(
                        line -> pen.getFontMetrics().getStringBounds(line, pen).getWidth())
                .max()
                .orElse(0);
        double left = card.centred() ? card.x() * width - widest / 2 : card.x() * width;
        Rectangle2D box = new Rectangle2D.Double(
                left - size * 0.6,
                card.y() * height - size * 1.2,
                widest + size * 1.2,
                step * card.lines().size() + size * 0.4);
        switch (card.look()) {
            case LIGHT_ON_BOX -> fill(pen, box, new Color(0x4a2036));
            case DARK_ON_BOX -> fill(pen, box, new Color(0xfdf6ea));
            case LIGHT_ON_VEIL -> fill(pen, box, new Color(0, 0, 0, 140));
            default -> {}
        }
        for (int i = 0; i < card.lines().size(); i++) {
            String line = card.lines().get(i);
            double own = pen.getFontMetrics().getStringBounds(line, pen).getWidth();
            double x = card.centred() ? card.x() * width - own / 2 : left;
            letters(pen, card, line, x, card.y() * height + i * step, size);
        }
    }

    private static void fill(Graphics2D pen, Shape box, Color colour) {
        pen.setColor(colour);
        pen.fill(box);
    }

    private static void letters(Graphics2D pen, CardTruth card, String line, double x, double y, float size) {
        Shape letters = pen.getFont()
                .createGlyphVector(pen.getFontRenderContext(), line)
                .getOutline((float) x, (float) y);
        switch (card.look()) {
            case DARK_ON_BOX -> fill(pen, letters, new Color(0x2b1a20));
            case OUTLINED -> {
                pen.setStroke(new BasicStroke(Math.max(2, size / 7), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
                pen.setColor(new Color(0x101010));
                pen.draw(letters);
                fill(pen, letters, new Color(0xfffdf5));
            }
            case LIGHT_WITH_SHADOW -> {
                double by = Math.max(1.5, size / 14);
                fill(pen, AffineTransform.getTranslateInstance(by, by).createTransformedShape(letters), Color.BLACK);
                fill(
                        pen,
                        AffineTransform.getTranslateInstance(-by / 2, -by / 2).createTransformedShape(letters),
                        new Color(0, 0, 0, 150));
                fill(pen, letters, Color.WHITE);
            }
            default -> fill(pen, letters, Color.WHITE);
        }
    }

    private static Graphics2D smooth(BufferedImage image) {
        Graphics2D pen = image.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        return pen;
    }
}
