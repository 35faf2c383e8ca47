import { isOn, pickAt, type Setup } from '../board/board.ts';
import { CONTROL_ROOM, deskOwner, type Owner, part } from '../rig/address.ts';
import type { SoloMode } from '../rig/schema.ts';
import { listens } from '../rig/strip-routes.ts';

/** What the solo switches of a board amount to. */
export interface Soloing {
  /** What the solos of strips do now. */
  readonly mode: SoloMode | undefined;
  /** Strips that the solo in place of others cuts: they are neither soloed nor solo-safe. */
  readonly cut: ReadonlySet<Owner>;
  /** Strips, auxes and subgroups that the control room listens to in place of what it is switched to. */
  readonly heard: ReadonlySet<Owner>;
}

export function soloingOf(setup: Setup): Soloing {
  const { strips, auxes, subgroups, solo } = setup.rig.desk;
  if (!solo) return { mode: undefined, cut: new Set(), heard: new Set() };
  const mode = solo.length > 1 ? modeAt(setup) : solo[0];
  const owners = strips.map(({ id }) => deskOwner(id));
  const isAt = (name: string) => (owner: Owner) => isOn(setup, part(owner, name));
  const soloed = owners.filter(isAt('solo'));
  const isInPlace = mode === 'in-place';
  const others = owners.filter((owner) => !soloed.includes(owner));
  const buses = listens(setup.rig) ? [...auxes, ...subgroups].map(({ id }) => deskOwner(id)) : [];
  return {
    mode,
    cut: new Set(
      isInPlace && soloed.length > 0 ? others.filter((owner) => !isAt('safe')(owner)) : [],
    ),
    heard: new Set([...(isInPlace ? [] : soloed), ...buses.filter(isAt('solo'))]),
  };
}

const modeAt = (setup: Setup): SoloMode | undefined => {
  const mode = pickAt(setup, part(CONTROL_ROOM, 'mode'));
  return setup.rig.desk.solo?.find((one) => one === mode);
};
