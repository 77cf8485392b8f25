import { useMemo } from "react";
import type { HybridComparison } from "../../core/hybrids/comparison";
import { sharesOfAcres, type HybridShare } from "../../core/hybrids/shareOfAcres";
import type { Crop } from "../../core/season";
import { accounts } from "../../core/accounts";
import { checkWords, hybridBasis, hybridGaps, netWords, ranked } from "../../workbook/hybridWords";
import type { SeasonReport } from "../../workbook/seasonReport";
import { comparisonsOf, hybridsSheet } from "../../workbook/sheets/hybridsSheet";
import { Disclosure } from "../parts/Disclosure";
import { Incomplete } from "../parts/Incomplete";
import { WriteButton } from "../parts/WriteButton";
import { usePane } from "../paneContext";
import { HybridAcres } from "./HybridAcres";
import { HybridDrawing } from "./HybridDrawing";
import { OneHybrid } from "./OneHybrid";
import { checkSays, hybridLine } from "./hybridsView";

/** Hybrids held against a check by their trials, the farm's acres by hybrid, and its own fields. */
export function HybridsPart({ report }: { readonly report: SeasonReport }) {
  const { season } = report;
  const all = useMemo(() => comparisonsOf(report), [report]);
  const shares = useMemo(() => sharesOfAcres(season, accounts(season).maturing), [season]);
  const crops = season.crops.filter(({ name }) => all.some(({ crop }) => crop === name) || shares.some(({ crop }) => crop === name));
  if (all.length === 0) return null;
  return (
    <section className="pn-card" aria-label="Hybrids">
      <Disclosure look="section" label="Hybrids">
        <Incomplete of={{ of: "hybrids" }} problems={report.problemsOf({ of: "hybrids" }).length} />
        {crops.map((crop) => (
          <OfCrop
            key={crop.name}
            report={report}
            crop={crop}
            all={ranked(all.filter((each) => each.crop === crop.name))}
            shares={shares.filter((each) => each.crop === crop.name)}
          />
        ))}
        {hybridBasis.map((words) => (
          <p key={words} className="pn-note">
            {words}
          </p>
        ))}
        {season.hybridTrials.length > 0 && <WriteButton label="Write the sheet “Hybrids compared”" sheets={() => [hybridsSheet(report)]} />}
      </Disclosure>
    </section>
  );
}

type OfCropProps = {
  readonly report: SeasonReport;
  readonly crop: Crop;
  readonly all: readonly HybridComparison[];
  readonly shares: readonly HybridShare[];
};

function OfCrop({ report, crop, all, shares }: OfCropProps) {
  const { format } = usePane();
  const unit = `${crop.yieldUnit}/${format.areaUnit}`;
  const check = all[0]?.check ?? null;
  const others = all.filter(({ isCheck, trials }) => !isCheck && !trials.isZero());
  return (
    <>
      {all.length > 0 && <p>{checkWords(crop.name, all)}</p>}
      {all
        .filter(({ isCheck }) => isCheck)
        .flatMap((each) => checkSays(each, unit, format))
        .map((words) => (
          <p key={words} className="pn-note">
            {words}
          </p>
        ))}
      {others.length > 0 && (
        <p className="pn-compare-heads" aria-hidden="true">
          <span>hybrid</span>
          <span>nets beside it</span>
          <span>
            {format.currency}/{format.areaUnit}
          </span>
        </p>
      )}
      {others.length > 0 && (
        <ul className="pn-compare">
          {others.map((each, index) => {
            const { label, about, aside } = hybridLine(each, index + 1, unit, format);
            return (
              <li key={each.hybrid}>
                <Disclosure
                  look="line"
                  label={
                    <>
                      {label}
                      <span className="pn-note pn-line">{about}</span>
                    </>
                  }
                  aside={
                    <>
                      <span className="pn-for-readers">, nets beside it </span>
                      {aside}
                    </>
                  }
                >
                  <OneHybrid report={report} of={each} unit={unit} />
                </Disclosure>
              </li>
            );
          })}
        </ul>
      )}
      {check !== null && <HybridDrawing all={others} check={check.name} unit={unit} />}
      {hybridGaps(all).map((words) => (
        <p key={words} className="pn-note">
          {words}
        </p>
      ))}
      {others.length > 0 && <p className="pn-note">{format.words(netWords(report.season, crop))}</p>}
      <HybridAcres report={report} crop={crop} shares={shares} unit={unit} />
    </>
  );
}
