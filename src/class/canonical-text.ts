/** Plain data as JSON that is the same for the same data: keys in order, nothing between. */
export const canonicalText = (data: unknown): string =>
  JSON.stringify(data, (_key, value: unknown) =>
    typeof value === 'object' && value !== null && !Array.isArray(value)
      ? Object.fromEntries(Object.entries(value).sort(([one], [other]) => (one < other ? -1 : 1)))
      : value,
  );
