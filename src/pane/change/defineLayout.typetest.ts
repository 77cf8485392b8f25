/** Checked by the compiler, never run: if a line marked below stops being an error, `tsc` fails. */
import type { Layout } from "../../core/partialBudget/layouts/layout";
import { may, must } from "./box";
import { defineLayout } from "./defineLayout";

declare const some: (...of: readonly unknown[]) => Layout;

defineLayout({
  name: "Own or hire",
  boxes: { payment: must("Payment"), salvage: may("Salvage value") },
  build: (_of, values) => {
    // @ts-expect-error a box that the form does not have
    const missing = values.pay;
    // @ts-expect-error a box that may stay blank
    const cents = values.salvage.times("100");
    return some(missing, cents, values.payment.times("100"));
  },
  // @ts-expect-error what is typed so far may be blank
  says: (values) => [values.payment.toFixed()],
});

defineLayout({
  name: "Own or hire",
  // @ts-expect-error every form has a box of this name
  boxes: { acres: must("Acres of it") },
  build: some,
});

defineLayout({
  // @ts-expect-error no layout that saved changes know
  name: "Own or hired",
  boxes: {},
  build: some,
});
