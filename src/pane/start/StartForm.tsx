import { useMemo, useRef, useState, type FormEvent } from "react";
import { Button } from "../parts/Button";
import type { SeasonReport } from "../../workbook/seasonReport";
import { enterTables } from "../commands/enterTables";
import { failureWords } from "../failure";
import { usePane } from "../paneContext";
import { useKept, useSending } from "../useKept";
import { today } from "../today";
import { useDecimalComma } from "../useDecimalComma";
import { startAnswers, startLacks, startReport } from "./startAnswer";
import { startView, type StartDraft } from "./startDraft";
import { CropStep, idOf, labelOf, LandStep, NeedStep, type Boxes } from "./StartSteps";

const steps = ["Crops", "What an acre needs", "Land and loans"] as const;

/** Three short steps from nothing to a rough budget. Nothing is written until the last button. */
export function StartForm({ report }: { readonly report: SeasonReport }) {
  const { host, watch, format, open, tell, fault } = usePane();
  const decimalComma = useDecimalComma();
  const { season } = report;
  const [draft, setDraft, beginAnew] = useKept<StartDraft>("start", () => ({ year: today().slice(0, 4) }));
  const [step, setStep] = useKept("start, step", () => 0, { isChoice: true });
  const { interrupted, sending } = useSending("start", "Crops and Budget");
  const [wasTried, setTried] = useState(-1);
  const [isWriting, setWriting] = useState(false);
  const [failed, setFailed] = useState("");
  const form = useRef<HTMLFormElement>(null);
  const view = useMemo(
    () =>
      startView(draft, {
        crops: season.crops.map(({ name }) => name),
        fields: season.fields.map(({ name }) => name),
        loans: season.loans.map(({ name }) => name),
        seasonYear: season.settings.seasonYear,
        decimalComma,
        currency: season.settings.currency,
      }),
    [draft, season, decimalComma],
  );
  const of = (name: string): number => (/^(year|crop)/.test(name) ? 0 : /^(need|whole)/.test(name) ? 1 : 2);
  const faulty = (at: number) => Object.entries(view.faults).filter(([name, words]) => words !== undefined && of(name) === at);
  const boxes: Boxes = {
    words: format.words,
    draft,
    view,
    change: (name, value) => setDraft((before) => ({ ...before, [name]: value })),
    // Once a step was tried, all that is wrong in it is said; before that what is wrong with something typed that cannot become
    // right by typing on.
    shown: (name) => (wasTried >= of(name) ? view.faults[name] : undefined),
  };
  const focusFirst = (selector: string) => requestAnimationFrame(() => form.current?.querySelector<HTMLElement>(selector)?.focus());
  const write = async () => {
    const content = watch.state().reading?.content;
    if (content === undefined || isWriting) return;
    setWriting(true);
    setFailed("");
    sending("begun");
    const written = await enterTables(host, content, view.entries);
    sending(written.ok ? "there" : "failed");
    if (!written.ok) {
      setWriting(false);
      setFailed(failureWords(written.failure));
      return;
    }
    // Before the reading, with which the form may go: it begins at its first step when it comes again.
    beginAnew(draft, { year: draft["year"] ?? "" });
    setStep(0);
    await watch.refresh();
    setWriting(false);
    setTried(-1);
    tell({
      tone: "done",
      text: `Written to ${view.entries.map(({ table }) => table).join(", ")}. Change any of it there; each cell says what it is for.`,
    });
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
      <ol className="pn-start-steps">
        {steps.map((title, at) => (
          <li key={title} aria-current={at === step ? "step" : undefined}>
            {at < step ? (
              <button type="button" className="pn-link" onClick={() => setStep(at)}>
                {at + 1} {title}
              </button>
            ) : (
              `${at + 1} ${title}`
            )}
          </li>
        ))}
      </ol>
      {answers.length > 0 && <Answers answers={answers} lacks={startLacks(view)} perArea={format.perArea} />}
      {step === 0 && <CropStep {...boxes} asksYear={season.settings.seasonYear === null} />}
      {step === 1 && <NeedStep {...boxes} perArea={format.perArea} currency={format.currency} />}
      {step === 2 && <LandStep {...boxes} perArea={format.perArea} />}
      {told.map(([name, words]) => (
        <p key={name} id={idOf(name)} className="pn-fault">
          {labelOf(name, view, format.words)}: {words}
        </p>
      ))}
      {interrupted !== null && <p className="pn-fault">{interrupted}</p>}
      {failed !== "" && (
        <p className="pn-result pn-result-failed" role="alert">
          {failed}
        </p>
      )}
      <p className="pn-buttons">
        <Button type="submit" appearance="primary" disabledFocusable={isWriting}>
          {step < steps.length - 1 ? "Next" : isWriting ? "Writing …" : "Write it into the workbook"}
        </Button>
        {step > 0 && <Button onClick={() => setStep(step - 1)}>Back</Button>}
      </p>
      <p className="pn-note">
        Nothing is written before the last step. It adds entries to the tables Crops, Fields, Budget and Loans, and changes none that is
        there.
      </p>
    </form>
  );
}

function Answers({
  answers,
  lacks,
  perArea,
}: {
  readonly answers: ReturnType<typeof startAnswers>;
  readonly lacks: string;
  readonly perArea: string;
}) {
  return (
    <table className="pn-table pn-start-answer" aria-live="polite">
      <caption>So far{lacks === "" ? "" : `, ${lacks}`}</caption>
      <thead>
        <tr>
          <th scope="col">Crop</th>
          <th scope="col" className="pn-number">
            Cash cost, {perArea}
          </th>
          <th scope="col" className="pn-number">
            Price needed
          </th>
          <th scope="col" className="pn-number">
            Yield needed
          </th>
        </tr>
      </thead>
      <tbody>
        {answers.map(({ crop, cost, price, yield: needed }) => (
          <tr key={crop}>
            <th scope="row">{crop}</th>
            <td className="pn-number">{cost}</td>
            <td className="pn-number">{price}</td>
            <td className="pn-number">{needed}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
