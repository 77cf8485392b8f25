import { Button } from "@fluentui/react-components";
import { useMemo, useRef, useState, type FormEvent } from "react";
import { yieldUnits } from "../../workbook/yieldUnits";
import type { SeasonReport } from "../../workbook/seasonReport";
import { enterTables } from "../commands/enterTables";
import { failureWords } from "../failure";
import { usePane } from "../paneContext";
import { today } from "../today";
import { useDecimalComma } from "../useDecimalComma";
import { startAnswers, startLacks, startReport } from "./startAnswer";
import { acreKinds, farmKinds, linesShown, startView, type StartDraft, type StartView } from "./startDraft";

const steps = ["Crops", "What an acre needs", "Land and loans"] as const;
type Boxes = { readonly draft: StartDraft; readonly view: StartView; readonly shown: (name: string) => string | undefined; readonly change: (name: string, value: string) => void };

/** Three short steps from nothing to a rough budget. Nothing is written until the last button. */
export function StartForm({ report }: { readonly report: SeasonReport }) {
  const { host, watch, format, open, tell, fault } = usePane();
  const decimalComma = useDecimalComma();
  const { season } = report;
  const [draft, setDraft] = useState<StartDraft>({ year: today().slice(0, 4) });
  const [step, setStep] = useState(0);
  const [wasTried, setTried] = useState(-1);
  const [isWriting, setWriting] = useState(false);
  const [failed, setFailed] = useState("");
  const form = useRef<HTMLFormElement>(null);
  const view = useMemo(() => startView(draft, {
    crops: season.crops.map(({ name }) => name), fields: season.fields.map(({ name }) => name), loans: (season.loans ?? []).map(({ name }) => name), seasonYear: season.settings.seasonYear, decimalComma,
  }), [draft, season, decimalComma]);
  const of = (name: string): number => (/^(year|crop)/.test(name) ? 0 : /^(need|whole)/.test(name) ? 1 : 2);
  const faulty = (at: number) => Object.entries(view.faults).filter(([name, words]) => words !== undefined && of(name) === at);
  const boxes: Boxes = {
    draft, view, change: (name, value) => setDraft((before) => ({ ...before, [name]: value })),
    // Once a step was tried, all that is wrong in it is said; before that what is wrong with something typed that cannot become right by typing on.
    shown: (name) => (wasTried >= of(name) ? view.faults[name] : undefined),
  };
  const focusFirst = (selector: string) => requestAnimationFrame(() => form.current?.querySelector<HTMLElement>(selector)?.focus());
  const write = async () => {
    const content = watch.state().reading?.content;
    if (content === undefined || isWriting) return;
    setWriting(true);
    setFailed("");
    const written = await enterTables(host, content, view.entries);
    if (!written.ok) {
      setWriting(false);
      setFailed(failureWords(written.failure));
      return;
    }
    await watch.refresh();
    setWriting(false);
    setDraft({ year: draft["year"] ?? "" });
    setStep(0);
    setTried(-1);
    tell({ tone: "done", text: `Written to ${view.entries.map(({ table }) => table).join(", ")}. Change any of it there; each cell says what it is for.` });
    open("season");
  };
  const submit = (event: FormEvent) => {
    event.preventDefault();
    setTried(Math.max(wasTried, step));
    const first = steps.findIndex((_, at) => at <= step && faulty(at).length > 0);
    if (first >= 0) {
      setStep(first);
      focusFirst("[aria-invalid=true]");
    } else if (step < steps.length - 1) {
      setStep(step + 1);
      focusFirst("input:not([type=radio])");
    } else write().catch(fault);
  };
  const answers = startAnswers(startReport(view.entries), format);
  const told = faulty(step).filter(([name]) => boxes.shown(name) !== undefined);
  return (
    <form ref={form} className="pn-form pn-start" onSubmit={submit} noValidate aria-label="Start a season">
      <ol className="pn-start-steps">{steps.map((title, at) => (
        <li key={title} aria-current={at === step ? "step" : undefined}>
          {at < step ? <button type="button" className="pn-link" onClick={() => setStep(at)}>{at + 1} {title}</button> : `${at + 1} ${title}`}
        </li>
      ))}
      </ol>
      {answers.length > 0 && <Answers answers={answers} lacks={startLacks(view)} perArea={format.perArea} />}
      {step === 0 && <CropStep {...boxes} asksYear={season.settings.seasonYear === null} />}
      {step === 1 && <NeedStep {...boxes} perArea={format.perArea} currency={format.currency} />}
      {step === 2 && <LandStep {...boxes} perArea={format.perArea} />}
      {told.map(([name, words]) => <p key={name} id={idOf(name)} className="pn-fault">{labelOf(name, view)}: {words}</p>)}
      {failed !== "" && <p className="pn-result pn-result-failed" role="alert">{failed}</p>}
      <p className="pn-buttons">
        <Button type="submit" appearance="primary" disabledFocusable={isWriting}>{step < steps.length - 1 ? "Next" : isWriting ? "Writing …" : "Write it into the workbook"}</Button>
        {step > 0 && <Button onClick={() => setStep(step - 1)}>Back</Button>}
      </p>
      <p className="pn-note">Nothing is written before the last step. It adds entries to the tables Crops, Fields, Budget and Loans, and changes none that is there.</p>
    </form>
  );
}

const capital = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1);

const idOf = (name: string): string => `start-${name.replaceAll(" ", "-")}`;

/** What a box is called where it stands by itself. */
function labelOf(name: string, { crops }: StartView): string {
  const [sort, of = "", ...rest] = name.split(" ");
  if (sort === "year") return "Season year";
  if (sort === "whole") return [of, ...rest].join(" ");
  const words: Readonly<Record<string, string>> = { name: "name", acres: "acres", goal: "yield goal", price: "expected price", unit: "yield unit", rent: "rent", charge: "land charge", share: "your share of the crop", balance: "balance", rate: "rate", payment: "payment", often: "payments a year", due: "next due" };
  const box = rest.join(" ");
  const whose = sort === "loan" ? `Loan ${Number(of) + 1}` : crops.find(({ line }) => line === Number(of))?.name ?? `Crop ${Number(of) + 1}`;
  return `${whose}, ${sort === "need" ? box : words[box] ?? box}`;
}

type BoxProps = Boxes & { readonly name: string; readonly isText?: boolean };

function Box({ name, draft, view, shown, change, isText = false }: BoxProps) {
  const isWrong = shown(name) !== undefined;
  return (
    <input
      aria-label={labelOf(name, view)} aria-invalid={isWrong} aria-describedby={isWrong ? idOf(name) : undefined} className={isText ? "pn-box" : "pn-box pn-number"}
      inputMode={isText ? undefined : "decimal"} autoComplete="off" value={draft[name] ?? ""} onChange={({ target }) => change(name, target.value)}
    />
  );
}

function CropStep({ asksYear, ...boxes }: Boxes & { readonly asksYear: boolean }) {
  const { draft, change, view } = boxes;
  return (
    <>
      <table className="pn-start-table">
        <thead><tr><th scope="col">Crop</th><th scope="col">Acres</th><th scope="col">Yield goal</th><th scope="col">Unit</th><th scope="col">Price</th></tr></thead>
        <tbody>{Array.from({ length: linesShown(draft, "crop") + 1 }, (_, line) => (
          <tr key={line}>
            <td><Box {...boxes} name={`crop ${line} name`} isText /></td>
            <td><Box {...boxes} name={`crop ${line} acres`} /></td>
            <td><Box {...boxes} name={`crop ${line} goal`} /></td>
            <td>
              <select className="pn-box" aria-label={labelOf(`crop ${line} unit`, view)} value={draft[`crop ${line} unit`] ?? "bu"} onChange={({ target }) => change(`crop ${line} unit`, target.value)}>
                {yieldUnits.map((unit) => <option key={unit} value={unit}>{unit}</option>)}
              </select>
            </td>
            <td><Box {...boxes} name={`crop ${line} price`} /></td>
          </tr>
        ))}
        </tbody>
      </table>
      {asksYear && <p className="pn-start-year"><label>Season year <Box {...boxes} name="year" /></label></p>}
    </>
  );
}

function NeedStep({ perArea, currency, ...boxes }: Boxes & { readonly perArea: string; readonly currency: string }) {
  const { crops } = boxes.view;
  return (
    <>
      <table className="pn-start-table">
        <thead><tr><th scope="col">{perArea}</th>{crops.map(({ line, name }) => <th key={line} scope="col">{name}</th>)}</tr></thead>
        <tbody>{acreKinds.map((kind) => (
          <tr key={kind}><th scope="row">{capital(kind)}</th>{crops.map(({ line }) => <td key={line}><Box {...boxes} name={`need ${line} ${kind}`} /></td>)}</tr>
        ))}
        </tbody>
      </table>
      <table className="pn-start-table">
        <thead><tr><th scope="col">{currency} a year, whole farm</th><th scope="col"><span className="pn-unseen">Amount</span></th></tr></thead>
        <tbody>{farmKinds.map((kind) => <tr key={kind}><th scope="row">{capital(kind)}</th><td><Box {...boxes} name={`whole ${kind}`} /></td></tr>)}</tbody>
      </table>
    </>
  );
}

function LandStep({ perArea, ...boxes }: Boxes & { readonly perArea: string }) {
  const { draft, change, view } = boxes;
  return (
    <>
      <table className="pn-start-table">
        <thead><tr><th scope="col">Land, {perArea}</th><th scope="col">Rent</th><th scope="col">Charge on own land</th><th scope="col">Your share %, crop share</th></tr></thead>
        <tbody>{view.crops.map(({ line, name }) => (
          <tr key={line}><th scope="row">{name}</th>{["rent", "charge", "share"].map((box) => <td key={box}><Box {...boxes} name={`land ${line} ${box}`} /></td>)}</tr>
        ))}
        </tbody>
      </table>
      {Array.from({ length: linesShown(draft, "loan") + 1 }, (_, line) => (
        <fieldset key={line} className="pn-start-loan">
          <legend>Loan {line + 1}</legend>
          <label>Name <Box {...boxes} name={`loan ${line} name`} isText /></label>
          <label>Balance <Box {...boxes} name={`loan ${line} balance`} /></label>
          <label>Rate, % a year <Box {...boxes} name={`loan ${line} rate`} /></label>
          <label>Payment <Box {...boxes} name={`loan ${line} payment`} /></label>
          <label>Next due <Box {...boxes} name={`loan ${line} due`} isText /></label>
          <label>Payments a year (blank: 1) <Box {...boxes} name={`loan ${line} often`} /></label>
          <label>Kind{" "}
            <select className="pn-box" value={draft[`loan ${line} kind`] ?? "term"} onChange={({ target }) => change(`loan ${line} kind`, target.value)}>
              <option value="term">term: paid off</option><option value="operating">operating: the season’s line</option>
            </select>
          </label>
        </fieldset>
      ))}
    </>
  );
}

function Answers({ answers, lacks, perArea }: { readonly answers: ReturnType<typeof startAnswers>; readonly lacks: string; readonly perArea: string }) {
  return (
    <table className="pn-table pn-start-answer" aria-live="polite">
      <caption>So far{lacks === "" ? "" : `, ${lacks}`}</caption>
      <thead><tr><th scope="col">Crop</th><th scope="col" className="pn-number">Cash cost, {perArea}</th><th scope="col" className="pn-number">Price needed</th><th scope="col" className="pn-number">Yield needed</th></tr></thead>
      <tbody>{answers.map(({ crop, cost, price, yield: needed }) => (
        <tr key={crop}><th scope="row">{crop}</th><td className="pn-number">{cost}</td><td className="pn-number">{price}</td><td className="pn-number">{needed}</td></tr>
      ))}
      </tbody>
    </table>
  );
}
