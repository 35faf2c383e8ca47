import { type Address, boxOwner, deskOwner, type Owner, part } from '../../rig/address.ts';
import { boxChannels, takesSends } from '../../rig/box-channels.ts';
import type { Aux } from '../../rig/schema.ts';
import { sendersTo } from '../../rig/strip-routes.ts';
import { carries, type Survey } from './survey.ts';

/** A bus that sends go to, an aux of the desk or a bus of the box, with those that are open. */
export interface OpenSends {
  readonly bus: Owner;
  /** Where its sends are taken: fixed, or switchable one by one. */
  readonly tap: Aux['tap'];
  /** The sends that something comes through, at least one. */
  readonly sends: readonly Address[];
}

/** All buses that something is sent to, auxes first. */
export function openSends(survey: Survey): OpenSends[] {
  const { rig } = survey.setup;
  const auxes = rig.desk.auxes.map(({ id, tap }) => ({
    bus: deskOwner(id),
    tap,
    sends: sendersTo(rig, id).map((strip) => part(deskOwner(strip.id), id)),
  }));
  const boxBuses = rig.box.buses.filter(takesSends).map(({ id, tap }) => ({
    bus: boxOwner(id),
    tap,
    sends: boxChannels(rig)
      .filter(({ buses }) => buses.some((bus) => bus.id === id))
      .map(({ owner }) => part(owner, id)),
  }));
  return [...auxes, ...boxBuses]
    .map((one) => ({ ...one, sends: one.sends.filter((send) => carries(survey, send)) }))
    .filter(({ sends }) => sends.length > 0);
}
