/** Charts, as the library asks for them. See rangeObjects.ts. */
import { blockAt } from "./addresses";
import type { RangeObject } from "./rangeObjects";
import { Collection, found, type Shared } from "./shared";
import type { ChartModel, SheetModel } from "./workbookModel";

export class Charts extends Collection<Chart> {
  constructor(
    private readonly shared: Shared,
    private readonly sheet: SheetModel,
  ) {
    super();
  }
  get items(): Chart[] {
    return this.sheet.charts.map((chart) => new Chart(this.sheet, chart));
  }
  indexer(key: string): Chart {
    return found(
      this.items.find((chart) => chart.Id === key),
      key,
    );
  }
  GetItemOrNullObject(key: string): Chart | null {
    return this.items.find((chart) => chart.Id === key) ?? null;
  }
  Add(_type: string, source: RangeObject, _by: string): Chart {
    this.shared.workbook.touch(this.sheet);
    const chart = {
      id: this.shared.workbook.id("chart"),
      title: "",
      place: "",
      series: [{ name: "", values: source.Address, categories: "" }],
    };
    this.sheet.charts.push(chart);
    return new Chart(this.sheet, chart);
  }
}
class Chart {
  constructor(
    private readonly sheet: SheetModel,
    private readonly model: ChartModel,
  ) {}
  get Id(): string {
    return this.model.id;
  }
  get Name(): string {
    return this.model.id;
  }
  get Title(): ChartTitle {
    return new ChartTitle(this.model);
  }
  get Legend(): ChartLegend {
    return new ChartLegend();
  }
  get Axes(): ChartAxes {
    return new ChartAxes(this.model);
  }
  get Series(): ChartSeriesCollection {
    return new ChartSeriesCollection(this.model);
  }
  SetPosition(from: string, to: string): void {
    blockAt(this.sheet, `${from}:${to}`);
    this.model.place = `${from}:${to}`;
  }
  Delete(): void {
    this.sheet.charts.splice(this.sheet.charts.indexOf(this.model), 1);
  }
}
class ChartTitle {
  constructor(private readonly chart: ChartModel) {}
  set Text(value: string) {
    this.chart.title = value;
  }
}
class ChartLegend {
  set Visible(_value: boolean) {}
  set Position(_value: string) {}
}
class ChartAxes {
  constructor(private readonly chart: ChartModel) {}
  get ValueAxis(): ChartValueAxis {
    return new ChartValueAxis(this.chart);
  }
}
class ChartValueAxis {
  constructor(private readonly chart: ChartModel) {}
  set Minimum(value: number) {
    this.chart.valuesFrom = value;
  }
}
class ChartSeriesCollection {
  constructor(private readonly chart: ChartModel) {}
  GetItemAt(index: number): ChartSeries {
    return new ChartSeries(found(this.chart.series[index], `series ${index}`));
  }
  Add(name: string): ChartSeries {
    const series = { name, values: "", categories: "" };
    this.chart.series.push(series);
    return new ChartSeries(series);
  }
}
class ChartSeries {
  constructor(private readonly model: ChartModel["series"][number]) {}
  get Format(): ChartSeriesFormat {
    return new ChartSeriesFormat();
  }
  set Name(value: string) {
    this.model.name = value;
  }
  SetValues(source: RangeObject): void {
    this.model.values = source.Address;
  }
  SetXAxisValues(source: RangeObject): void {
    this.model.categories = source.Address;
  }
}
class ChartSeriesFormat {
  get Fill(): ChartFill {
    return new ChartFill();
  }
  get Line(): ChartLine {
    return new ChartLine();
  }
}
class ChartFill {
  SetSolidColor(_colour: string): void {}
}
class ChartLine {
  set Color(_colour: string) {}
}
