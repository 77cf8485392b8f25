/** The columns of the table Loans. */
import { choice, count, date, declared, money, rate, text } from "./column";
import { kindWords, rateWords } from "./shared";

const loanKinds = ["operating", "term"] as const;

/** Whole months lie between the payments of these. */
export const paymentsAYear = ["1", "2", "3", "4", "6", "12"] as const;

export const loanColumns = declared("Loans", {
  name: text("Name", { required: true, hint: "What the loan is called.", width: 24, words: ["loan", "lender"] }),
  kind: choice("Kind", loanKinds, { hint: "Operating for the season's line, term for one that is paid off.", words: kindWords }),
  balance: money("Balance", {
    required: true,
    hint: "What is owed before Next due; of an operating loan, before the first month of the season.",
    words: ["owed", "outstanding", "loanbalance"],
  }),
  rate: rate("Rate", { required: true, hint: "Interest a year.", words: rateWords }),
  payment: money("Payment", { hint: "Each payment, interest and principal together.", words: ["pmt", "installment", "instalment"] }),
  paymentsAYear: count("Payments a year", { range: "above zero", hint: "1, 2, 3, 4, 6 or 12.", words: ["paymentsperyear", "pmtsperyear"] }),
  nextDue: date("Next due", { hint: "The date of the next payment.", words: ["duedate", "due", "nextpayment"] }),
  firstDue: date("First due", { hint: "The first payment of all, where the loan is new: none is counted before it." }),
  over: text("For", { hint: "The field or crop that bears it. Blank: all land, by acres." }),
});
