const CENTRE: readonly string[] = ['c', 'centre', 'center', '0'];
const SIDES: ReadonlyMap<string, number> = new Map([
  ['l', -1],
  ['left', -1],
  ['r', 1],
  ['right', 1],
]);
const SIGNS: ReadonlyMap<string, number> = new Map([
  ['-', -1],
  ['+', 1],
]);

/**
 * A position of a pan that a person typed, from −1 at the left to 1 at the right: `30 left`, `L30`, `−30 %`, `full
 * right`, `centre`. Nothing when it is none: a number alone, but for 0, does not say a side.
 */
export function readPan(typed: string): number | undefined {
  const plain = typed
    .toLowerCase()
    .replace(/[−–]/g, '-')
    .replace(/%|percent/, '');
  const words = plain.match(/[a-z]+|\d+(?:[.,]\d+)?|\S/g) ?? [];
  const [first = '', second] = words;
  if (words.length > 2) return undefined;
  if (second === undefined) return CENTRE.includes(first) ? 0 : SIDES.get(first);
  const side = SIDES.get(first) ?? SIGNS.get(first) ?? SIDES.get(second);
  const share = shareOf(first) ?? shareOf(second);
  return side === undefined || share === undefined ? undefined : side * share;
}

function shareOf(word: string): number | undefined {
  if (word === 'full') return 1;
  return /^\d/.test(word) ? Number(word.replace(',', '.')) / 100 : undefined;
}
