/** A value, or every reason why there is none. Plain data, so it can be logged, compared and sent to a worker. */
export type Result<Value, Problem> =
  { readonly ok: true; readonly value: Value } | { readonly ok: false; readonly problems: readonly Problem[] };

export const ok = <Value>(value: Value) => ({ ok: true, value }) as const;
export const failed = <Problem>(...problems: Problem[]) => ({ ok: false, problems }) as const;
