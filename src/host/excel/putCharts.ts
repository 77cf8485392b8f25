import type { ChartModel } from "../../workbook/resultSheet";
import { seriesColours } from "../sheetLook";

/** Native charts over cells of the same sheet. */
export function putCharts(sheet: Excel.Worksheet, charts: readonly ChartModel[]): void {
  for (const model of charts) {
    const [first, ...others] = model.series;
    if (first === undefined) continue;
    const range = (address: string) => sheet.getRange(address).untrack();
    // Over the cells of one series Excel makes exactly one; which way they run does not matter then.
    const chart = sheet.charts.add(model.kind === "column" ? "ColumnClustered" : "Line", range(first.values), "Auto");
    chart.title.text = model.title;
    chart.legend.visible = others.length > 0;
    chart.legend.position = "Bottom";
    const series = [chart.series.getItemAt(0), ...others.map(({ name }) => chart.series.add(name))];
    model.series.forEach(({ name, values }, index) => {
      const each = series[index] as Excel.ChartSeries;
      each.name = name;
      each.setValues(range(values));
      each.setXAxisValues(range(model.categories));
      const colour = seriesColours[index % seriesColours.length] as string;
      if (model.kind === "column") each.format.fill.setSolidColor(colour);
      else each.format.line.color = colour;
    });
    if (model.startsAtZero === true) chart.axes.valueAxis.minimum = 0;
    chart.setPosition(model.from, model.to);
  }
}
