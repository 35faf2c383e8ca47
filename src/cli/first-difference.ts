/** Where two pieces of plain data differ, and what either has there. */
export interface Difference {
  readonly at: readonly (string | number)[];
  readonly expected: unknown;
  readonly found: unknown;
}

/** The first place where two pieces of plain data differ; nothing when they are alike, whatever the order of keys. */
export function firstDifference(expected: unknown, found: unknown): Difference | undefined {
  if (Object.is(expected, found)) return undefined;
  const isList = Array.isArray(expected);
  if (!isComposite(expected) || !isComposite(found) || isList !== Array.isArray(found)) {
    return { at: [], expected, found };
  }
  for (const key of new Set([...Object.keys(expected), ...Object.keys(found)])) {
    const inner = firstDifference(expected[key], found[key]);
    if (inner) return { ...inner, at: [isList ? Number(key) : key, ...inner.at] };
  }
  return undefined;
}

const isComposite = (data: unknown): data is Record<string, unknown> =>
  typeof data === 'object' && data !== null;
