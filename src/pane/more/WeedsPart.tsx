import { cautionsOf } from "../../core/cautions";
import { mixes } from "../../core/weeds/tankMix";
import type { SeasonReport } from "../../workbook/seasonReport";
import { loadWords, mixingCard, programmesOf, sitesWords, weedsSheet } from "../../workbook/sheets/weedsSheet";
import { Disclosure } from "../parts/Disclosure";
import { WriteButton } from "../parts/WriteButton";
import { usePane } from "../paneContext";
import { weedLine } from "../../workbook/weedLine";
import { FigureTable } from "../season/FigureTable";

/** What is sprayed on fields with listed weeds, the sites left against each, and what goes into a tank. */
export function WeedsPart({ report }: { readonly report: SeasonReport }) {
  const { format } = usePane();
  const listed = programmesOf(report).filter(({ weeds }) => weeds.length > 0);
  const tanks = mixes(report.season);
  const card = mixingCard(report);
  if (listed.length === 0 && tanks.length === 0) return null;
  const { areaUnit } = report.season.settings;
  return (
    <section className="pn-card" aria-label="Weeds and tank">
      <Disclosure look="section" label="Weeds and tank">
        <ul className="pn-notice-list">
          {cautionsOf.tank.map((words) => (
            <li key={words}>{words}</li>
          ))}
        </ul>
        {listed.map(({ field, passes, weeds, inEveryPass, sinceLastYear }) => (
          <Disclosure key={field} look="line" label={weedLine({ field, passes, weeds })}>
            <FigureTable
              caption={`${field}: sites of action, ${format.currency} per ${format.areaName}`}
              corner="Pass"
              columns={["sites", "cost"]}
              rows={passes.map(({ date, status, isOpen, sites, costPerArea }, index) => ({
                name: `${index + 1}. ${date ?? "no date"}, ${status === "done" ? "done" : isOpen ? "planned" : "planned, not to come"}`,
                cells: [sites.join(", ") || "–", costPerArea === null ? "–" : format.money(costPerArea)],
              }))}
            />
            <ul>
              {weeds.map(({ weed, resistantTo, sitesLeft }) => (
                <li key={weed}>
                  {weed}
                  {resistantTo.length > 0 && `, resistant to ${resistantTo.join(", ")}`}:{" "}
                  {sitesLeft.length === 0
                    ? "no pass"
                    : sitesLeft.map((sites, index) => `pass ${index + 1} ${sitesWords(sites)}`).join(", ")}
                  .
                </li>
              ))}
            </ul>
            {inEveryPass.length > 0 && <p>In every pass: {inEveryPass.join(", ")}.</p>}
            {sinceLastYear.length > 0 && <p>Used here last year too: {sinceLastYear.join(", ")}.</p>}
          </Disclosure>
        ))}
        {tanks.map((mix) => (
          <p key={`${"field" in mix.target ? mix.target.field : mix.target.crop} ${mix.date} ${mix.isDone}`}>
            <strong>
              {"field" in mix.target ? mix.target.field : mix.target.crop}, {mix.date ?? "no date"}
            </strong>
            : {loadWords(mix, areaUnit)}
          </p>
        ))}
        {listed.length > 0 && <WriteButton label="Write the sheet “Weeds by field”" sheets={() => [weedsSheet(report)]} />}
        {card !== null && <WriteButton label="Write the “Mixing card”" sheets={() => [card]} />}
      </Disclosure>
    </section>
  );
}
