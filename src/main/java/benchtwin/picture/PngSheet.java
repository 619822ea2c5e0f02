package benchtwin.picture;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.function.Consumer;
import javax.imageio.ImageIO;

/** A sheet that becomes a bitmap. */
final class PngSheet implements Sheet {

    private final BufferedImage image;

    private PngSheet(int heightPx) {
        image = new BufferedImage(Look.WIDTH_PX, heightPx, BufferedImage.TYPE_INT_RGB);
    }

    static byte[] bytes(Drawing drawing) {
        PngSheet sheet = new PngSheet(drawing.heightPx());
        sheet.part("paper", g -> Marks.paper(g, drawing.heightPx()));
        drawing.draw(sheet);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            ImageIO.setUseCache(false);
            ImageIO.write(sheet.image, "png", bytes);
        } catch (IOException impossible) {
            throw new UncheckedIOException("a picture could not be kept in memory", impossible);
        }
        return bytes.toByteArray();
    }

    @Override
    public void part(String name, Consumer<Graphics2D> part) {
        Graphics2D graphics = image.createGraphics();
        try {
            graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            graphics.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            graphics.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
            graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_NORMALIZE);
            part.accept(graphics);
        } finally {
            graphics.dispose();
        }
    }
}
