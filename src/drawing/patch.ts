import {
  type Address,
  controls,
  inputFedBy,
  type Owner,
  ownerOf,
  part,
  pickAt,
  type Setup,
} from '../../simulator/index.ts';

/** What the cords of an insert lead to and from. */
export interface InsertPatch {
  /** The owner of the input that its send is plugged into. */
  readonly sentTo: Owner | undefined;
  /** The owner of the output that its return is plugged from. */
  readonly returnedFrom: Owner | undefined;
}

/** The patch of an owner's insert; of its left side where it is stereo. */
export function insertPatch(setup: Setup, owner: Owner): InsertPatch {
  const from = pickAt(setup, firstJack(setup, part(owner, 'insert.return')));
  const to = inputFedBy(setup, firstJack(setup, part(owner, 'insert.send')));
  return { sentTo: to && ownerOf(to), returnedFrom: from && ownerOf(from) };
}

/** The output jack that is plugged into an input, or into its left side; nothing where none is. */
export const feedOf = (setup: Setup, input: Address): Address | undefined =>
  pickAt(setup, firstJack(setup, input));

/** The input jack that an output, or its left side, is plugged into; nothing where it is not. */
export const goalOf = (setup: Setup, output: Address): Address | undefined =>
  inputFedBy(setup, output) ?? inputFedBy(setup, part(output, 'l'));

/** A jack by its place: the place itself where it is mono, else its left side. */
function firstJack({ rig }: Setup, place: Address): Address {
  const left = part(place, 'l');
  const isStereo = controls(rig).has(part(place.replace(/\.send$/, '.return'), 'l'));
  return isStereo ? left : place;
}
