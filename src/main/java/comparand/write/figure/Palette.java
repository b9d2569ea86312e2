package comparand.write.figure;

import comparand.document.chart.Ink;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.awt.image.DataBufferInt;
import java.awt.image.IndexColorModel;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;

/**
 * The few colours of figures, each exact, and between them and white as many steps as smooth edges take. A file of one byte a
 * dot is a third as large, and is written several times as fast.
 */
final class Palette {

    private static final int STEPS = 32;
    private static final int BITS = 8;

    private final List<Integer> colours = new ArrayList<>();
    private final HashMap<Integer, Byte> nearest = new HashMap<>();

    Palette() {
        colours.add(Type.WHITE);
        for (var ink : Ink.values()) {
            add(ink.rgb());
            colours.add(Type.tint(ink.rgb()));
        }
        add(Type.HAIR);
        add(Type.HATCH);
    }

    /** A colour and its steps towards white. */
    private void add(int rgb) {
        for (int step = 0; step < STEPS; step++) {
            int mixed = 0;
            for (int shift = 16; shift >= 0; shift -= 8) {
                int part = (rgb >> shift) & 0xFF;
                mixed |= (part + (255 - part) * step / STEPS) << shift;
            }
            colours.add(mixed);
        }
    }

    /** The same picture in these colours. */
    BufferedImage of(BufferedImage picture) {
        var indexed =
                new BufferedImage(picture.getWidth(), picture.getHeight(), BufferedImage.TYPE_BYTE_INDEXED, model());
        int[] from = ((DataBufferInt) picture.getRaster().getDataBuffer()).getData();
        byte[] to = ((DataBufferByte) indexed.getRaster().getDataBuffer()).getData();
        for (int i = 0; i < from.length; i++) {
            to[i] = from[i] == Type.WHITE ? 0 : nearest.computeIfAbsent(from[i] & Type.WHITE, this::search);
        }
        return indexed;
    }

    private IndexColorModel model() {
        var rgb = colours.stream().mapToInt(Integer::intValue).toArray();
        var parts = new byte[3][rgb.length];
        for (int i = 0; i < rgb.length; i++) {
            parts[0][i] = (byte) (rgb[i] >> 16);
            parts[1][i] = (byte) (rgb[i] >> 8);
            parts[2][i] = (byte) rgb[i];
        }
        return new IndexColorModel(BITS, rgb.length, parts[0], parts[1], parts[2]);
    }

    private byte search(int rgb) {
        int best = 0;
        int least = Integer.MAX_VALUE;
        for (int i = 0; i < colours.size(); i++) {
            int apart = apart(rgb, colours.get(i));
            if (apart < least) {
                least = apart;
                best = i;
            }
        }
        return (byte) best;
    }

    private static int apart(int one, int other) {
        int sum = 0;
        for (int shift = 16; shift >= 0; shift -= 8) {
            int d = ((one >> shift) & 0xFF) - ((other >> shift) & 0xFF);
            sum += d * d;
        }
        return sum;
    }
}
