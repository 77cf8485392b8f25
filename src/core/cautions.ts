/** What must be said where the work can hurt, word for word the same everywhere. */

export const labelCaution = "The label is the law: follow its rates, intervals and what it lets follow. No product or rate is suggested here.";
export const manualCaution = "The operator's manual gives the maker's limits; where it differs, it rules.";
export const raisedPlanterCaution = "Lower or block the planter before you work under it: engine off, key out.";
export const blankGainCaution = "The yield gain starts blank: replicated trials often find no difference. Enter one that you can stand behind.";
export const adjusterCaution = "Ask your insurer's adjuster before you destroy a stand.";
export const estimateCaution = "Yields by date and stand are averages of trials, not a promise for this field.";
export const planningCaution = "Figures are for planning; they are not financial, tax or legal advice.";
