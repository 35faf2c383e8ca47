import { stripTypeOf } from './address.ts';
import type { Aux, Rig, Strip, StripStage, StripType, Subgroup } from './schema.ts';

/** Where a strip can lead to, and what is wide on its way there. */

/** The auxes that a strip has sends to. */
export function auxesOf(rig: Rig, strip: Strip): readonly Aux[] {
  const { auxes } = stripTypeOf(rig, strip);
  return auxes ? rig.desk.auxes.filter(({ id }) => auxes.includes(id)) : rig.desk.auxes;
}

/** The strips that have a send to an aux. */
export const sendersTo = (rig: Rig, aux: string): readonly Strip[] =>
  rig.desk.strips.filter((strip) => auxesOf(rig, strip).some(({ id }) => id === aux));

/** The strips that can be assigned to a subgroup, or to `main`. */
export const assignableTo = (rig: Rig, bus: string): readonly Strip[] =>
  rig.desk.strips.filter((strip) => busesOf(rig, strip).includes(bus));

/** The ids of the subgroups that a strip can be assigned to, then `main` if it can be assigned there. */
export function busesOf(rig: Rig, strip: Strip): readonly string[] {
  const { assigns } = stripTypeOf(rig, strip);
  const buses = [...rig.desk.subgroups.map(({ id }) => id), 'main'];
  return assigns ? buses.filter((id) => assigns.includes(id)) : buses;
}

/** Whether what a strip has after a stage has two sides: on a stereo strip always, else from the pan on. */
export const isStereoAfter = ({ stereo, stages }: StripType, stage: StripStage): boolean =>
  stereo || stages.indexOf(stage) >= stages.indexOf('pan');

/** Whether a subgroup has two sides. */
export const isStereoSubgroup = ({ takes }: Subgroup): boolean => takes === 'both';

/** The strip whose second path this one is, if it is one. */
export const firstPathOf = ({ desk }: Rig, strip: Strip): Strip | undefined =>
  desk.strips.find(({ id }) => id === strip.inline);

/** The second path of a strip, if it has one. */
export const secondPathOf = ({ desk }: Rig, strip: Strip): Strip | undefined =>
  desk.strips.find(({ inline }) => inline === strip.id);

/** Whether solo listens somewhere, in the control room. */
export const listens = ({ desk }: Rig): boolean =>
  (desk.solo ?? []).some((mode) => mode !== 'in-place');
