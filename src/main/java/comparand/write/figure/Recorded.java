package comparand.write.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** Keeps what is drawn on it, to be drawn elsewhere later. */
final class Recorded implements Surface {

    private final List<Consumer<Surface>> strokes = new ArrayList<>();

    @Override
    public void line(List<Spot> through, Pen pen) {
        var spots = List.copyOf(through);
        strokes.add(s -> s.line(spots, pen));
    }

    @Override
    public void polygon(List<Spot> corners, Paint paint) {
        var spots = List.copyOf(corners);
        strokes.add(s -> s.polygon(spots, paint));
    }

    @Override
    public void circle(Spot centre, double radius, Paint paint) {
        strokes.add(s -> s.circle(centre, radius, paint));
    }

    @Override
    public void text(Lettering lettering) {
        strokes.add(s -> s.text(lettering));
    }

    void replay(Surface surface) {
        strokes.forEach(s -> s.accept(surface));
    }
}
