import { Field, Input, Select } from "@fluentui/react-components";
import { useRef, useState, type FormEvent } from "react";
import { Button } from "../parts/Button";
import type { Item } from "../../core/season";
import type { Layer } from "../../core/kinds";
import { lostWords } from "../commands/addEntries";
import { addPurchase } from "../commands/addPurchase";
import { billKinds } from "../../workbook/columns/purchases";
import { findTables } from "../../workbook/findTables";
import type { SeasonReport } from "../../workbook/seasonReport";
import { decimalCommaSet } from "../../workbook/tables/settings";
import { failureWords } from "../failure";
import { usePane } from "../paneContext";
import { useKept, useSending } from "../useKept";
import { today } from "../today";
import { Disclosure } from "../parts/Disclosure";
import { neededLabel } from "../parts/neededLabel";
import { PickBox } from "../parts/PickBox";
import { typedAs } from "../parts/typed";
import { emptyDraft, itemNamed, lastPrice, notYet, purchaseView, type PurchaseDraft, type PurchaseField } from "./purchaseDraft";
import { againstPlan } from "./rowEffect";
import { useRowEffect } from "./useRowEffect";
import { whatChanged } from "./whatChanged";

export type PurchaseFormProps = { readonly report: SeasonReport; readonly layer: Layer };

/** One invoice line: typed, checked, added as a row; what is typed stays until the row is in the workbook. */
export function PurchaseForm({ report, layer }: PurchaseFormProps) {
  const { host, watch, format, jump, fault } = usePane();
  const { items } = report.season;
  const [draft, setDraft, beginAnew] = useKept<PurchaseDraft>("purchase", () => emptyDraft(today()));
  const { interrupted, sending } = useSending("purchase", "Purchases");
  const [wasTried, setTried] = useState(false);
  const [isAdding, setAdding] = useState(false);
  const [result, setResult] = useState<{ readonly tone: "done" | "failed"; readonly text: string } | null>(null);
  const form = useRef<HTMLFormElement>(null);
  const content = watch.state().reading?.content;
  const decimalComma = content !== undefined && decimalCommaSet(findTables(content).tables.get("Season") ?? null);
  const { faults, units, says, row, perPack } = purchaseView(draft, { items, decimalComma }, format);
  const item = itemNamed(items, draft.item);
  const effect = useRowEffect(report, layer, row);
  const last = item === null ? null : lastPrice(report.season, item, draft.unit);

  const change = (field: PurchaseField) => (value: string) => {
    setResult(null);
    setDraft((before) => withUnit({ ...before, [field]: value }, before));
  };
  /** A newly chosen item is bought by the pack unless something else is said. */
  const withUnit = (next: PurchaseDraft, before: PurchaseDraft): PurchaseDraft => {
    const bought: Item | null = itemNamed(items, next.item);
    return bought === null || bought === itemNamed(items, before.item) ? next : { ...next, unit: bought.packName };
  };
  /** What is wrong is said of a field that has something in it, and of every field once the row was tried. */
  const shownFault = (field: PurchaseField) => (wasTried || (draft[field] !== "" && field !== "item") ? faults[field] : undefined);

  const add = async () => {
    const before = watch.state().reading;
    if (row === null || before === null) return;
    setAdding(true);
    setResult(null);
    sending("begun");
    const added = await addPurchase(host, before.content, row);
    sending(added.ok ? "there" : "failed");
    if (!added.ok) {
      setAdding(false);
      setResult({ tone: "failed", text: failureWords(added.failure, "The purchase was not added.") });
      return;
    }
    const isUntouched = beginAnew(draft, emptyDraft(draft.date));
    setTried(false);
    const after = await watch.refresh();
    setAdding(false);
    const lost = lostWords(added.value);
    setResult(
      after.ok
        ? {
            tone: "done",
            text:
              `The purchase was added.${lost} ` +
              `${whatChanged(before.report, after.value.report, { layer, format, item: itemNamed(items, draft.item) })}`,
          }
        : { tone: "failed", text: `The purchase was added,${lost} but the workbook could not be read again. ${after.failure.what}` },
    );
    if (isUntouched) form.current?.querySelector<HTMLInputElement>("[role=combobox]")?.focus();
  };
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (isAdding) return;
    setTried(true);
    if (row === null) {
      // After the faults are shown, so that the first of them is read with its field.
      requestAnimationFrame(() => form.current?.querySelector<HTMLElement>("[aria-invalid=true]")?.focus());
      return;
    }
    add().catch(fault);
  };
  const text = (field: PurchaseField, label: string, more: { required?: boolean; type?: "date"; numeric?: boolean } = {}) => {
    const message = shownFault(field);
    return (
      <Field
        label={neededLabel(label, more.required ?? false)}
        required={more.required ?? false}
        {...(message !== undefined && { validationMessage: message })}
      >
        <Input
          type={more.type ?? "text"}
          inputMode={more.numeric ? "decimal" : undefined}
          value={draft[field]}
          onChange={(_, { value }) => change(field)(value)}
        />
      </Field>
    );
  };
  const targets = [...report.season.crops, ...report.season.fields].map(({ name }) => name);
  const hasItems = items.length > 0;
  const choose = (field: "over" | "kind", label: string, choices: readonly (readonly [string, string])[]) => {
    const message = shownFault(field) ?? (draft.over !== "" || draft.kind !== "" ? faults[field] : undefined);
    return (
      <Field label={neededLabel(label, !hasItems)} required={!hasItems} {...(message !== undefined && { validationMessage: message })}>
        <Select value={draft[field]} onChange={(_, { value }) => change(field)(value)}>
          {choices.map(([value, words]) => (
            <option key={value} value={value}>
              {words}
            </option>
          ))}
        </Select>
      </Field>
    );
  };

  const blankOver = !hasItems ? "choose" : item?.charged === "as used" || item === null ? "where it is used" : "as the item is charged";
  const target = (
    <div className="pn-pair">
      {choose("over", hasItems ? "Only for" : "For", [
        ["", blankOver],
        ["all", "all fields"],
        ...targets.map((name) => [name, name] as const),
      ])}
      {choose("kind", "Kind", [
        ["", hasItems ? "the item's own" : "choose"],
        ...billKinds.map((kind) => [kind, format.words(kind)] as const),
      ])}
    </div>
  );

  return (
    <form ref={form} className="pn-form" onSubmit={submit} noValidate aria-label="What did you buy?">
      <PickBox
        label="Item"
        required
        value={draft.item}
        choices={items.map(({ name }) => name)}
        fault={shownFault("item")}
        change={change("item")}
      />
      {faults.item !== undefined && draft.item.trim() !== "" && wasTried && (
        <button type="button" className="pn-link" onClick={() => jump({ table: "Items" })}>
          Go to Items
        </button>
      )}
      {hasItems ? (
        <>
          <div className="pn-pair">
            {text("quantity", "Quantity", { required: draft.over === "", numeric: true })}
            <Field
              label={neededLabel("Unit", draft.over === "")}
              required={draft.over === ""}
              {...(shownFault("unit") !== undefined && { validationMessage: shownFault("unit")! })}
            >
              <Select value={draft.unit} disabled={units.length === 0} onChange={(_, { value }) => change("unit")(value)}>
                {units.length === 0 && <option value="">item first</option>}
                {units.map((unit) => (
                  <option key={unit} value={unit}>
                    {unit}
                  </option>
                ))}
              </Select>
            </Field>
          </div>
          <div className="pn-pair">
            <PickBox
              label={draft.unit === "" ? "Price per unit" : `Price per ${draft.unit}`}
              isNumber
              value={draft.price}
              choices={last === null ? [] : [typedAs(last.price, decimalComma)]}
              fault={shownFault("price")}
              change={change("price")}
            />
            {text("amount", "or amount in all", { numeric: true })}
          </div>
        </>
      ) : (
        <>
          {target}
          {text("amount", "Amount in all", { required: true, numeric: true })}
          <p className="pn-note">
            It counts against what is budgeted there for that kind. Once your items stand in the table Items, bills go in by pack and unit
            too.
          </p>
        </>
      )}
      {last !== null && (
        <p className="pn-note">
          Last {format.quantity(last.price)} a {draft.unit}, {format.day(last.date)}: press ↓ and Enter in the price to take it.
        </p>
      )}
      {text("date", "Date", { required: true, type: "date" })}
      <Disclosure look="line" label={hasItems ? "More boxes: freight, what it is for, supplier" : "More boxes: freight, supplier"} keeps>
        <div className="pn-pair">
          {text("freight", "Freight", { numeric: true })}
          {text("rebate", "Rebate", { numeric: true })}
        </div>
        {hasItems && target}
        {hasItems && draft.over !== "" && <p className="pn-note">Charged there directly, by acres, and never stock.</p>}
        {text("supplier", "Supplier")}
        {text("paidOn", "Paid on", { type: "date" })}
        {text("note", "Note")}
      </Disclosure>
      <output className="pn-says">
        {says}
        {perPack !== null && item !== null && (
          <>
            {" "}
            <strong>{againstPlan(perPack, item.planPricePerPack, item.packName, format)}</strong>
          </>
        )}
        {says !== "" && effect !== "" && <> {effect}</>}
      </output>
      {wasTried && row === null && <p className="pn-fault">{notYet(faults)}</p>}
      {interrupted !== null && <p className="pn-fault">{interrupted}</p>}
      <Button type="submit" appearance="primary" disabledFocusable={isAdding}>
        {isAdding ? "Adding …" : "Add the purchase"}
      </Button>
      <div aria-live="polite">{result !== null && <p className={`pn-result pn-result-${result.tone}`}>{result.text}</p>}</div>
    </form>
  );
}
