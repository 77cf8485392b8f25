import { useId } from "react";
import type { PageProps } from "../page";
import { CellLink } from "../parts/CellLink";
import { Disclosure } from "../parts/Disclosure";
import { Incomplete } from "../parts/Incomplete";
import { Lines } from "../parts/Lines";
import { WriteButton } from "../parts/WriteButton";
import { usePane } from "../paneContext";
import { standSheet } from "../../workbook/sheets/standSheet";
import { CountForm } from "./CountForm";
import { FileSpotsForm } from "./FileSpotsForm";
import { OutlookCard } from "./OutlookCard";
import { ReseedCard } from "./ReseedCard";
import { SpotMapDrawing } from "./SpotMapDrawing";
import { StandDrawing } from "./StandDrawing";
import { FigureTable } from "../season/FigureTable";
import { spotMap } from "./spotMap";
import { partColumns, standView } from "./standView";

/** What the counts of a field say of its stand and its yield, and whether to replant: the answers, with what they rest on folded. */
export function StandPage({ report, field: chosen }: Pick<PageProps, "report"> & { readonly field: string }) {
  const field = report.season.fields.find(({ name }) => name === chosen);
  const outlook = report.figures.outlooks.find((each) => each.field.name === chosen);
  const stand = outlook?.stand ?? null;
  if (field === undefined) return <p>Stands are counted in fields, and the table Fields has none yet.</p>;
  return (
    <>
      {stand === null ? (
        <p>Nothing is counted in {field.name} yet. Count several spots across the field and add each of them with the form below.</p>
      ) : (
        <CountedCard stand={stand} report={report} />
      )}
      <section className="pn-purchase" aria-label="Add a count">
        <Disclosure look="section" label="Add a count" keeps>
          <CountForm key={field.name} field={field} />
          <Disclosure look="line" label="Spots from a file" keeps>
            <FileSpotsForm key={field.name} field={field} report={report} />
          </Disclosure>
        </Disclosure>
      </section>
      {outlook !== undefined && <OutlookCard key={field.name} of={outlook} report={report} />}
      {stand !== null && <ReseedCard key={`reseed ${field.name}`} stand={stand} report={report} />}
    </>
  );
}

type CountedProps = { readonly stand: PageProps["report"]["figures"]["stands"][number]; readonly report: PageProps["report"] };

function CountedCard({ stand, report }: CountedProps) {
  const { format } = usePane();
  const heading = useId();
  const view = standView(stand, format);
  const subject = { of: "field", name: stand.field.name } as const;
  const first = stand.summary.counts[0]!.source;
  const map = spotMap(stand, format);
  const inside = [...(map === null ? [] : ["map"]), ...(view.parts.length === 0 ? [] : ["parts"])];
  return (
    <section className="pn-card pn-crop" aria-labelledby={heading}>
      <header>
        <h3 id={heading}>Stand</h3>
      </header>
      <Incomplete of={subject} problems={report.problemsOf(subject).length} />
      <p className="pn-main pn-crop-main">
        <span className="pn-figure">{view.figure}</span> <span className="pn-unit">{view.unit}</span>
      </p>
      <p>
        <strong>{view.likely}</strong>
      </p>
      <StandDrawing summary={stand.summary} target={stand.field.targetStand} />
      {view.advice !== "" && <p className="pn-fault">{view.advice}</p>}
      <Disclosure look="line" label={`The counts, their ${[...inside, "spread"].join(", ")} and emergence`}>
        {view.parts.length > 0 && (
          <FigureTable caption="By part; spots counted of those advised" corner="Part" columns={partColumns(format)} rows={view.parts} />
        )}
        {map !== null && <SpotMapDrawing map={map} />}
        <Lines lines={view.lines} />
        <p>
          <CellLink at={first} words="Show the counts in the workbook" />
        </p>
        <WriteButton label="Write the sheet “Stand”" sheets={() => [standSheet(report)]} />
      </Disclosure>
    </section>
  );
}
