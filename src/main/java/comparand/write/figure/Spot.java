package comparand.write.figure;

/** A place on a surface, in points from its upper left corner; y goes down. */
public record Spot(double x, double y) {

    Spot plus(double right, double down) {
        return new Spot(x + right, y + down);
    }
}
