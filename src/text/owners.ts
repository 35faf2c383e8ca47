import { CONTROL_ROOM, type Owner, ownerLabel, type Rig } from '../../simulator/index.ts';

/** The sides of what is stereo, by the last step of an address. */
export const SIDES: Readonly<Record<string, string>> = { l: 'left', r: 'right' };

/** A label that is a thing inside a sentence: without the capital that it has beside its field. `EQ` keeps its own. */
export const inProse = (label: string): string =>
  label.replace(/^\p{Lu}(?=\p{Ll})/u, (first) => first.toLowerCase());

/** Name of an owner inside a sentence: `Strip 3 Cello`, `the Cello track`, `the main bus`, `the compressor`. */
export function ownerName(rig: Rig, owner: Owner): string {
  const [section, id] = owner.split('.');
  const label = ownerLabel(rig, owner);
  if (id === 'main' || owner === CONTROL_ROOM || section === 'rack') return `the ${inProse(label)}`;
  if (section !== 'box') return label;
  const bus = rig.box.buses.find((one) => one.id === id);
  if (bus) return `the box bus ${bus.label}`;
  const capture = rig.box.captures.find((one) => one.id === id);
  return capture ? `the capture track ${capture.label}` : `the ${label}`;
}

/** Name of a track or of one side of it: `Cello`, `Piano left`. */
export function sourceName(rig: Rig, source: string): string {
  const [id, side] = source.split('.');
  const label = rig.box.tracks.find((track) => track.id === id)?.label ?? source;
  if (!side) return label;
  return `${label} ${SIDES[side] ?? side}`;
}
