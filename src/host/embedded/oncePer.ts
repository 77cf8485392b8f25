/** What is worked out once for a thing that never changes, and kept as long as the thing is. */
export function oncePer<Key extends object, Value>(work: (of: Key) => Value): (of: Key) => Value {
  const known = new WeakMap<Key, { readonly value: Value }>();
  return (of) => {
    let before = known.get(of);
    if (before === undefined) known.set(of, (before = { value: work(of) }));
    return before.value;
  };
}
