package handspan.show.report;

import handspan.show.chart.Theme;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Writes a report as one HTML file that needs no other: charts within it, no scripts, light or dark as the reader has
 * it. Well-formed as XML, too.
 */
final class ReportHtml {
    private static final double UNITS_PER_MM = 4.4;
    private static final double WIDTH_UNITS = 640;

    private static final String STYLE = """
            :root { color-scheme: light dark; --ground: #fff; --text: #1b1f24; --quiet: #525962; --line: #dcdfe3; }
            body { margin: 0 auto; max-width: 50rem; padding: 1rem; background: var(--ground); color: var(--text);
              font: 1rem/1.45 "Liberation Sans", Arial, Helvetica, sans-serif; overflow-wrap: break-word; }
            h1 { font-size: 1.8rem; font-weight: normal; margin: 0.5rem 0 1rem; }
            h2 { font-size: 1.25rem; margin: 2rem 0 0.5rem; }
            dl { display: grid; grid-template-columns: 8rem 1fr; gap: 0.25rem 1rem; margin: 0; }
            dt, thead th, footer { color: var(--quiet); }
            dd { margin: 0; }
            .wide { overflow-x: auto; margin: 1rem 0; }
            table { border-collapse: collapse; font-size: 0.9rem; }
            caption { text-align: left; padding-bottom: 0.4rem; }
            th, td { padding: 0.2rem 0 0.2rem 1.2rem; text-align: right; font-weight: normal; white-space: nowrap;
              border-bottom: 1px solid var(--line); }
            th:first-child { padding-left: 0; text-align: left; }
            thead th, tr.before-sum > * { border-bottom-color: var(--quiet); }
            ul { padding-left: 1.2rem; }
            figure { margin: 1rem 0; overflow-x: auto; }
            svg { display: block; width: 100%; min-width: 30rem; height: auto; }
            svg text { font-family: "Liberation Sans", Arial, Helvetica, sans-serif; }
            svg.dark { display: none; }
            footer { margin-top: 2rem; font-size: 0.85rem; }
            @media (prefers-color-scheme: dark) {
              :root { --ground: #16191d; --text: #f0f2f4; --quiet: #b4bbc4; --line: #383e46; }
              svg.light { display: none; }
              svg.dark { display: block; }
            }
            @media (max-width: 32rem) {
              dl { grid-template-columns: 1fr; }
              dd { margin-bottom: 0.4rem; }
              table { font-size: 0.8rem; }
              th, td { padding-left: 0.5rem; }
            }
            @media print { svg { min-width: 0; } }
            """;

    private final RoomReport report;
    private final ChartSvg svg = new ChartSvg();
    private final StringBuilder html = new StringBuilder();
    private int charts;

    private ReportHtml(RoomReport report) {
        this.report = report;
    }

    /**
     * Writes.
     *
     * @param file replaced if it is there; its folder must exist
     */
    static void write(RoomReport report, Path file) throws IOException {
        byte[] bytes = new ReportHtml(report).text().getBytes(StandardCharsets.UTF_8);
        SheetFile.write(file, out -> out.write(bytes));
    }

    private String text() {
        html.append("<!DOCTYPE html>\n<html lang=\"en\" xmlns=\"http://www.w3.org/1999/xhtml\">\n<head>\n")
                .append("<meta charset=\"utf-8\"/>\n")
                .append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n");
        element("title", "Handspan report: " + report.title());
        html.append("<style>\n").append(STYLE).append("</style>\n</head>\n<body>\n<main>\n");
        element("h1", report.title());
        html.append("<section>\n");
        report.parts().forEach(this::part);
        html.append("</section>\n</main>\n<footer>");
        html.append(escaped(report.foot())).append("</footer>\n</body>\n</html>\n");
        return html.toString();
    }

    private void part(ReportPart part) {
        if (part instanceof ReportPart.Heading heading) {
            html.append("</section>\n<section>\n");
            element("h2", heading.words());
        } else if (part instanceof ReportPart.Words words) {
            element("p", words.words());
        } else if (part instanceof ReportPart.Points points) {
            html.append("<ul>\n");
            points.sentences().forEach(sentence -> element("li", sentence));
            html.append("</ul>\n");
        } else if (part instanceof ReportPart.Facts facts) {
            html.append("<dl>\n");
            for (ReportPart.Fact fact : facts.facts()) {
                element("dt", fact.name());
                element("dd", fact.words());
            }
            html.append("</dl>\n");
        } else if (part instanceof ReportPart.Grid grid) {
            grid(grid);
        } else if (part instanceof ReportPart.Chart chart) {
            chart(chart);
        }
    }

    private void element(String name, String words) {
        html.append('<').append(name).append('>').append(escaped(words));
        html.append("</").append(name).append(">\n");
    }

    private void grid(ReportPart.Grid grid) {
        html.append("<div class=\"wide\" tabindex=\"0\">\n<table>\n");
        element("caption", grid.caption());
        html.append("<thead><tr>");
        grid.columns()
                .forEach(column -> html.append("<th scope=\"col\">")
                        .append(escaped(column))
                        .append("</th>"));
        html.append("</tr></thead>\n<tbody>\n");
        int sum = grid.rows().size() - grid.sums();
        for (int i = 0; i < grid.rows().size(); i++) {
            List<String> row = grid.rows().get(i);
            html.append(i == sum - 1 && grid.sums() > 0 ? "<tr class=\"before-sum\">" : "<tr>");
            html.append("<th scope=\"row\">").append(escaped(row.get(0))).append("</th>");
            row.stream()
                    .skip(1)
                    .forEach(cell -> html.append("<td>").append(escaped(cell)).append("</td>"));
            html.append("</tr>\n");
        }
        html.append("</tbody>\n</table>\n</div>\n");
    }

    private void chart(ReportPart.Chart chart) {
        charts++;
        html.append("<figure tabindex=\"0\">\n");
        List<String> drawings = new ArrayList<>();
        for (Theme theme : Theme.values()) {
            String word = theme.name().toLowerCase(Locale.ROOT);
            ChartSvg.Place place = new ChartSvg.Place(
                    "chart" + charts + "-" + word,
                    word,
                    WIDTH_UNITS,
                    UNITS_PER_MM * chart.heightMm(),
                    chart.title(),
                    chart.words());
            drawings.add(svg.draw(chart.drawn().in(theme), place));
        }
        drawings.forEach(drawing -> html.append(drawing).append('\n'));
        html.append("</figure>\n");
    }

    /** What XML and HTML take for their own (XML 1.0, 2.4); of controls, which XML has no place for, nothing stays. */
    static String escaped(String words) {
        StringBuilder escaped = new StringBuilder();
        words.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> escaped.append("&amp;");
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '"' -> escaped.append("&quot;");
                default -> {
                    if (c >= ' ') {
                        escaped.appendCodePoint(c);
                    }
                }
            }
        });
        return escaped.toString();
    }
}
