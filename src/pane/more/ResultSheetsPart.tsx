import { useMemo } from "react";
import { planningCaution } from "../../core/cautions";
import { costCautions } from "../../workbook/costCautions";
import type { SeasonReport } from "../../workbook/seasonReport";
import { breakEvenSheet } from "../../workbook/sheets/breakEvenSheet";
import { costPerAcreSheet } from "../../workbook/sheets/costPerAcre";
import { fieldPagesSheet } from "../../workbook/sheets/fieldPages";
import { harvestSheet } from "../../workbook/sheets/harvestSheet";
import { standSheet } from "../../workbook/sheets/standSheet";
import { uncheckedNotes } from "../../workbook/uncheckedCoefficients";
import { Disclosure } from "../parts/Disclosure";
import { WriteButton } from "../parts/WriteButton";

/** Sheets of figures to keep or print, with what must be said where ammonia, a dryer, a bin or long hours are among the costs. */
export function ResultSheetsPart({ report }: { readonly report: SeasonReport }) {
  const { season, figures } = report;
  const told = useMemo(() => [...uncheckedNotes(season), ...costCautions(season), planningCaution], [season]);
  return (
    <section className="pn-card" aria-label="Sheets to print">
      <Disclosure look="section" label="Sheets to print">
        <ul className="pn-notice-list">
          {told.map((words) => (
            <li key={words}>{words}</li>
          ))}
        </ul>
        <WriteButton label="Write “Cost per acre” and “Break-even”" sheets={() => [costPerAcreSheet(report), breakEvenSheet(report)]} />
        {season.fields.length > 0 && <WriteButton label="Write “Field pages”, a page a field" sheets={() => [fieldPagesSheet(report)]} />}
        {figures.stands.length > 0 && <WriteButton label="Write the sheet “Stand”" sheets={() => [standSheet(report)]} />}
        {season.harvest.length > 0 && <WriteButton label="Write the sheet “Harvest by field”" sheets={() => [harvestSheet(report)]} />}
      </Disclosure>
    </section>
  );
}
