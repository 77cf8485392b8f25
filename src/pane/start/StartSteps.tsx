import { yieldUnits } from "../../workbook/yieldUnits";
import type { Format } from "../format";
import { acreKinds, farmKinds, linesShown, type StartDraft, type StartView } from "./startDraft";

/** What every box of a step takes: what is typed, what is wrong with it as far as it is said yet, and whom to tell of a change. */
export type Boxes = {
  readonly draft: StartDraft;
  readonly view: StartView;
  readonly words: Format["words"];
  readonly shown: (name: string) => string | undefined;
  readonly change: (name: string, value: string) => void;
};

const capital = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1);

/** The element that says what is wrong with a box. */
export const idOf = (name: string): string => `start-${name.replaceAll(" ", "-")}`;

/** What a box is called where it stands by itself. */
export function labelOf(name: string, { crops }: StartView, ours: Format["words"]): string {
  const [sort, of = "", ...rest] = name.split(" ");
  if (sort === "year") return "Season year";
  if (sort === "whole") return ours([of, ...rest].join(" "));
  const words: Readonly<Record<string, string>> = {
    name: "name",
    acres: "acres",
    goal: "yield goal",
    price: "expected price",
    unit: "yield unit",
    rent: "rent",
    charge: "land charge",
    share: "your share of the crop",
    balance: "balance",
    rate: "rate",
    payment: "payment",
    often: "payments a year",
    due: "next due",
  };
  const box = rest.join(" ");
  const whose =
    sort === "loan" ? `Loan ${Number(of) + 1}` : (crops.find(({ line }) => line === Number(of))?.name ?? `Crop ${Number(of) + 1}`);
  return `${whose}, ${sort === "need" ? ours(box) : (words[box] ?? box)}`;
}

type BoxProps = Boxes & { readonly name: string; readonly isText?: boolean };

function Box({ name, draft, view, words, shown, change, isText = false }: BoxProps) {
  const isWrong = shown(name) !== undefined;
  return (
    <input
      aria-label={labelOf(name, view, words)}
      aria-invalid={isWrong}
      aria-describedby={isWrong ? idOf(name) : undefined}
      className={isText ? "pn-box" : "pn-box pn-number"}
      inputMode={isText ? undefined : "decimal"}
      autoComplete="off"
      value={draft[name] ?? ""}
      onChange={({ target }) => change(name, target.value)}
    />
  );
}

/** Crops with their acres, goal and price; a blank line below the last. */
export function CropStep({ asksYear, ...boxes }: Boxes & { readonly asksYear: boolean }) {
  const { draft, change, view, words } = boxes;
  return (
    <>
      <table className="pn-start-table">
        <thead>
          <tr>
            <th scope="col">Crop</th>
            <th scope="col">Acres</th>
            <th scope="col">Yield goal</th>
            <th scope="col">Unit</th>
            <th scope="col">Price</th>
          </tr>
        </thead>
        <tbody>
          {Array.from({ length: linesShown(draft, "crop") + 1 }, (_, line) => (
            <tr key={line}>
              <td>
                <Box {...boxes} name={`crop ${line} name`} isText />
              </td>
              <td>
                <Box {...boxes} name={`crop ${line} acres`} />
              </td>
              <td>
                <Box {...boxes} name={`crop ${line} goal`} />
              </td>
              <td>
                <select
                  className="pn-box"
                  aria-label={labelOf(`crop ${line} unit`, view, words)}
                  value={draft[`crop ${line} unit`] ?? "bu"}
                  onChange={({ target }) => change(`crop ${line} unit`, target.value)}
                >
                  {yieldUnits.map((unit) => (
                    <option key={unit} value={unit}>
                      {unit}
                    </option>
                  ))}
                </select>
              </td>
              <td>
                <Box {...boxes} name={`crop ${line} price`} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {asksYear && (
        <p className="pn-start-year">
          <label>
            Season year <Box {...boxes} name="year" />
          </label>
        </p>
      )}
    </>
  );
}

/** What an acre of each crop needs, kind by kind, and what the farm needs as a whole. */
export function NeedStep({ perArea, currency, ...boxes }: Boxes & { readonly perArea: string; readonly currency: string }) {
  const { crops } = boxes.view;
  return (
    <>
      <table className="pn-start-table">
        <thead>
          <tr>
            <th scope="col">{perArea}</th>
            {crops.map(({ line, name }) => (
              <th key={line} scope="col">
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {acreKinds.map((kind) => (
            <tr key={kind}>
              <th scope="row">{boxes.words(capital(kind))}</th>
              {crops.map(({ line }) => (
                <td key={line}>
                  <Box {...boxes} name={`need ${line} ${kind}`} />
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      <table className="pn-start-table">
        <thead>
          <tr>
            <th scope="col">{currency} a year, whole farm</th>
            <th scope="col">
              <span className="pn-unseen">Amount</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {farmKinds.map((kind) => (
            <tr key={kind}>
              <th scope="row">{boxes.words(capital(kind))}</th>
              <td>
                <Box {...boxes} name={`whole ${kind}`} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}

/** How the land of each crop is held, and what is owed. */
export function LandStep({ perArea, ...boxes }: Boxes & { readonly perArea: string }) {
  const { draft, change, view } = boxes;
  return (
    <>
      <table className="pn-start-table">
        <thead>
          <tr>
            <th scope="col">Land, {perArea}</th>
            <th scope="col">Rent</th>
            <th scope="col">Charge on own land</th>
            <th scope="col">Your share % (50/50 crop share: 50)</th>
          </tr>
        </thead>
        <tbody>
          {view.crops.map(({ line, name }) => (
            <tr key={line}>
              <th scope="row">{name}</th>
              {["rent", "charge", "share"].map((box) => (
                <td key={box}>
                  <Box {...boxes} name={`land ${line} ${box}`} />
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      {Array.from({ length: linesShown(draft, "loan") + 1 }, (_, line) => (
        <fieldset key={line} className="pn-start-loan">
          <legend>Loan {line + 1}</legend>
          <label>
            Name <Box {...boxes} name={`loan ${line} name`} isText />
          </label>
          <label>
            Balance <Box {...boxes} name={`loan ${line} balance`} />
          </label>
          <label>
            Rate, % a year <Box {...boxes} name={`loan ${line} rate`} />
          </label>
          <label>
            Payment <Box {...boxes} name={`loan ${line} payment`} />
          </label>
          <label>
            Next due <Box {...boxes} name={`loan ${line} due`} isText />
          </label>
          <label>
            Payments a year (blank: 1) <Box {...boxes} name={`loan ${line} often`} />
          </label>
          <label>
            Kind{" "}
            <select
              className="pn-box"
              value={draft[`loan ${line} kind`] ?? "term"}
              onChange={({ target }) => change(`loan ${line} kind`, target.value)}
            >
              <option value="term">term: paid off</option>
              <option value="operating">operating: the season’s line</option>
            </select>
          </label>
        </fieldset>
      ))}
    </>
  );
}
