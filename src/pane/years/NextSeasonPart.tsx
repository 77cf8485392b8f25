import { useState } from "react";
import { nextSeason } from "../../workbook/next/nextSeason";
import type { SeasonReport } from "../../workbook/seasonReport";
import { failureWords, outcome } from "../failure";
import { Button } from "../parts/Button";
import { Disclosure } from "../parts/Disclosure";
import { ToldLine, type Told } from "../parts/Told";
import { openRowWords } from "../parts/WriteButton";
import { usePane } from "../paneContext";

/** Starts the next season as a workbook of its own, where the host can open one. */
export function NextSeasonPart({ report }: { readonly report: SeasonReport }) {
  const { host, openNext, fault } = usePane();
  const [isMaking, setMaking] = useState(false);
  const [told, setTold] = useState<Told>(null);
  const { seasonYear } = report.season.settings;
  const start = async (open: NonNullable<typeof openNext>) => {
    const held = openRowWords(report.problems);
    if (held !== undefined) return setTold({ tone: "failed", text: held });
    setMaking(true);
    setTold(null);
    const made = await outcome(async () => {
      const next = nextSeason(await host.read(), report);
      return next === null ? null : open(next);
    });
    setMaking(false);
    setTold(
      !made.ok
        ? { tone: "failed", text: failureWords(made.failure, "No workbook was made.") }
        : made.value === null
          ? null
          : { tone: "done", text: made.value },
    );
  };
  return (
    <Disclosure look="line" label="Start the next season">
      <p>
        A new workbook: fields, crops, items at their last average price, the plan a year later, machines, loans after this year, and what
        is left over or paid for the next crop as opening stock. This workbook stays as it is.
      </p>
      {seasonYear === null ? (
        <p>Enter Season year in the table Season first.</p>
      ) : openNext === undefined ? (
        <p>This Excel opens no new workbook for an add-in. The command line makes one: npm run -s next -- OLD.xlsx NEW.xlsx.</p>
      ) : (
        <p className="pn-buttons">
          <Button
            disabledFocusable={isMaking}
            onClick={() => {
              if (!isMaking) start(openNext).catch(fault);
            }}
          >
            {isMaking ? "Making …" : `Start season ${Number(seasonYear) + 1}`}
          </Button>
        </p>
      )}
      <ToldLine told={told} />
    </Disclosure>
  );
}
