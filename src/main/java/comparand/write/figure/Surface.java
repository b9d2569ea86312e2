package comparand.write.figure;

import java.util.List;

/** What figures are drawn on: few shapes, in points, later ones over earlier ones, nothing transparent. */
public interface Surface {

    /** An open line through two places or more. */
    void line(List<Spot> through, Pen pen);

    /** A closed shape. */
    void polygon(List<Spot> corners, Paint paint);

    void circle(Spot centre, double radius, Paint paint);

    void text(Lettering lettering);
}
