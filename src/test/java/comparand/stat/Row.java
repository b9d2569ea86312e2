package comparand.stat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.StreamSupport;

/** The inputs of a row of checks. */
record Row(JsonNode in) {

    double d(String name) {
        return in.required(name).asDouble();
    }

    double d(String name, double otherwise) {
        return in.path(name).asDouble(otherwise);
    }

    int i(String name) {
        return in.required(name).asInt();
    }

    double[] numbers(String name) {
        return numbers(in.required(name));
    }

    List<double[]> groups(String name) {
        return StreamSupport.stream(in.required(name).spliterator(), false)
                .map(Row::numbers)
                .toList();
    }

    Row at(String name) {
        return new Row(in.required(name));
    }

    /** Several means with their SDs and numbers. */
    List<Moments> moments() {
        double[] mean = numbers("mean");
        double[] sd = numbers("sd");
        double[] n = numbers("n");
        return IntStream.range(0, mean.length)
                .mapToObj(k -> new Moments(mean[k], sd[k], (int) n[k]))
                .toList();
    }

    /** The moments named with a number: {@code m1, sd1, n1}. */
    Moments moments(int which) {
        return new Moments(d("m" + which), d("sd" + which), i("n" + which));
    }

    private static double[] numbers(JsonNode list) {
        return StreamSupport.stream(list.spliterator(), false)
                .mapToDouble(JsonNode::asDouble)
                .toArray();
    }
}
