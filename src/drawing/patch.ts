import {
  type Address,
  controls,
  cordFrom,
  type Feed,
  feedOf,
  inputsFedBy,
  type Owner,
  ownerOf,
  part,
  type Setup,
} from '../../simulator/index.ts';

/** What a jack is joined to: by a cord, or by a normal that nothing breaks. */
export interface Joint {
  /** The jack at the other end. */
  readonly jack: Address;
  readonly by: Feed['by'];
}

/** What an insert leads to and comes from. */
export interface InsertPatch {
  /** What its send leads to besides its own return; of several, what its cord leads to. */
  readonly sent: Joint | undefined;
  /** What its return comes from instead of its own send. */
  readonly returned: Joint | undefined;
  /** Whether the signal goes straight on from send to return. */
  readonly isStraight: boolean;
}

/** The patch of an owner's insert; of its left side where it is stereo. */
export function insertPatch(setup: Setup, owner: Owner): InsertPatch {
  const [send, back] = ['insert.send', 'insert.return'].map((name) =>
    firstJack(setup, part(owner, name)),
  ) as [Address, Address];
  const feed = feedInto(setup, back);
  const isStraight = feed?.jack === send;
  return {
    sent: jointsFrom(setup, send).find(({ jack }) => jack !== back),
    returned: isStraight ? undefined : feed,
    isStraight,
  };
}

/** What comes into an input, or into its left side; nothing where nothing does. */
export function feedInto(setup: Setup, input: Address): Joint | undefined {
  const feed = feedOf(setup, firstJack(setup, input));
  return feed && { jack: feed.output, by: feed.by };
}

/** What an output, or its left side, leads to; of several, what its cord leads to. */
export const goalFrom = (setup: Setup, output: Address): Joint | undefined =>
  jointsFrom(setup, output)[0] ?? jointsFrom(setup, part(output, 'l'))[0];

const jointsFrom = (setup: Setup, output: Address): Joint[] =>
  inputsFedBy(setup, output).map((jack) => ({
    jack,
    by: cordFrom(setup, output) === jack ? 'cord' : 'normal',
  }));

/** A name at the end of a joint; a normal is told by a word of its own. */
export const jointName = (name: string, { by }: Joint): string =>
  by === 'normal' ? `norm. ${name}` : name;

/** The owner at the other end of a joint. */
export const ownerAt = (joint: Joint | undefined): Owner | undefined =>
  joint && ownerOf(joint.jack);

/** A jack by its place: the place itself where it is mono, else its left side. */
function firstJack({ rig }: Setup, place: Address): Address {
  const left = part(place, 'l');
  const isStereo = controls(rig).has(part(place.replace(/\.send$/, '.return'), 'l'));
  return isStereo ? left : place;
}
