package handspan.profile;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.number.fit.MonotoneCurve;
import handspan.room.FitQuality;
import java.util.ArrayList;
import java.util.List;

/** The quality of a fit as JSON. */
final class FitJson {
    private FitJson() {}

    static ObjectNode tree(FitQuality fit) {
        ObjectNode tree = JsonNodeFactory.instance
                .objectNode()
                .put("method", fit.method())
                .put("parameters", fit.parameters())
                .put("rmsMm", fit.rmsMm())
                .put("leftOutMm", fit.leftOutMm())
                .put("widened", fit.widened());
        ArrayNode coefficients = tree.putArray("coefficients");
        for (FitQuality.Coefficient one : fit.coefficients()) {
            coefficients
                    .addObject()
                    .put("name", one.name())
                    .put("value", one.value())
                    .put("standardUncertainty", one.standardUncertainty());
        }
        points(tree.putArray("residuals"), fit.residuals(), "residualMm");
        points(tree.putArray("uncertainty"), fit.uncertainty(), "standardUncertaintyMm");
        return tree;
    }

    private static void points(ArrayNode array, List<MonotoneCurve.Point> points, String key) {
        for (MonotoneCurve.Point point : points) {
            array.addObject().put("mm", point.x()).put(key, point.y());
        }
    }

    static FitQuality read(JsonFields fields) throws ProfileException {
        String method = fields.text("method");
        int parameters = fields.whole("parameters", 1, 9);
        double rmsMm = fields.number("rmsMm", given -> trial(given, 0, 1));
        double leftOutMm = fields.number("leftOutMm", given -> trial(0, given, 1));
        double widened = fields.number("widened", given -> trial(0, 0, given));
        List<MonotoneCurve.Point> residuals = points(fields, "residuals", "residualMm");
        List<MonotoneCurve.Point> uncertainty = points(fields, "uncertainty", "standardUncertaintyMm");
        List<FitQuality.Coefficient> coefficients = coefficients(fields);
        return fields.made(
                "uncertainty",
                () -> new FitQuality(
                        method, parameters, residuals, rmsMm, leftOutMm, widened, uncertainty, coefficients));
    }

    private static List<FitQuality.Coefficient> coefficients(JsonFields fields) throws ProfileException {
        List<FitQuality.Coefficient> coefficients = new ArrayList<>();
        for (JsonFields one : fields.objects("coefficients")) {
            String name = one.text("name");
            double value = one.number("value");
            coefficients.add(new FitQuality.Coefficient(
                    name,
                    value,
                    one.number("standardUncertainty", given -> new FitQuality.Coefficient(name, value, given))));
        }
        return coefficients;
    }

    private static FitQuality trial(double rmsMm, double leftOutMm, double widened) {
        MonotoneCurve.Point sure = new MonotoneCurve.Point(0, 0);
        return new FitQuality("", 1, List.of(), rmsMm, leftOutMm, widened, List.of(sure, sure));
    }

    private static List<MonotoneCurve.Point> points(JsonFields fields, String array, String key)
            throws ProfileException {
        List<MonotoneCurve.Point> points = new ArrayList<>();
        for (JsonFields point : fields.objects(array)) {
            points.add(new MonotoneCurve.Point(point.number("mm"), point.number(key)));
        }
        return points;
    }
}
