import {
  type ChoiceControl,
  CONTROL_ROOM,
  deskOwner,
  firstPathOf,
  isOn,
  type Owner,
  part,
  type Setup,
  secondPathOf,
  soloingOf,
} from '../../simulator/index.ts';
import { ownerName } from './owners.ts';

/** What holds at a strip or in the control room by what is set elsewhere, a sentence each; mostly nothing. */
export function elsewhereSentences(setup: Setup, owner: Owner): string[] {
  const { cut, heard } = soloingOf(setup);
  const swapped = swappedWith(setup, owner);
  return [
    ...(cut.has(owner) ? ['The solo of another strip cuts this one.'] : []),
    ...(owner === CONTROL_ROOM && heard.size > 0 ? ['It listens to what is soloed.'] : []),
    ...(swapped
      ? [`The faders are swapped: the one here moves ${ownerName(setup.rig, swapped)}.`]
      : []),
  ];
}

/** The other path of an in-line strip whose faders are swapped. */
function swappedWith(setup: Setup, owner: Owner): Owner | undefined {
  const strip = setup.rig.desk.strips.find(({ id }) => deskOwner(id) === owner);
  if (!strip) return undefined;
  const first = firstPathOf(setup.rig, strip);
  const other = first ?? secondPathOf(setup.rig, strip);
  const swap = part(deskOwner((first ?? strip).id), 'swap');
  return other && isOn(setup, swap) ? deskOwner(other.id) : undefined;
}

/** What is chosen, in as few letters as it stands in the drawing: `PFL`, `in place`, `main bus`. */
export function shortOption({ options }: ChoiceControl, value: string): string {
  const label = options.find((option) => option.value === value)?.label ?? value;
  const [, inBrackets] = /\((.+)\)/.exec(label) ?? [];
  return inBrackets ?? label.replace(/^the /, '');
}
