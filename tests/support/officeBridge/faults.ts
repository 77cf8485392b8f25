/** What can go wrong with one request to Excel, for tests to ask for. */
export type Fault =
  /** Excel refuses the whole request. */
  | { readonly how: "refused"; readonly code: string }
  /** So many of its actions are carried out; the next one is refused. */
  | { readonly how: "cut"; readonly after: number; readonly code?: string }
  /** It never arrives, or the answer never does. */
  | { readonly how: "lost request" | "lost answer" }
  /** It is carried out and answered so many milliseconds later; what is asked meanwhile is answered at once. */
  | { readonly how: "late"; readonly milliseconds: number }
  /** It is carried out, and answered by something that is no answer. */
  | { readonly how: "not JSON" | "empty answer" | "gateway fault" }
  /** It is answered twice. */
  | { readonly how: "answered twice" };

/** What comes back for a request with such an answer: its status and its body. */
export const brokenAnswers: Readonly<Partial<Record<Fault["how"], readonly [status: number, body: string]>>> = {
  "not JSON": [200, "<!DOCTYPE html><title>Sign in</title>"],
  "empty answer": [200, "{}"],
  "gateway fault": [503, "upstream connect error"],
};
