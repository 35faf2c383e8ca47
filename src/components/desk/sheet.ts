import {
  type Address,
  type Control,
  controls,
  jacks,
  type Owner,
  ownerLabel,
  ownerOf,
  pluginAt,
  type Rig,
  sendBusAt,
} from '../../../simulator/index.ts';

/** One line of a sheet: a control, or an output jack whose cord may lead somewhere. */
export type SheetItem =
  | { readonly kind: 'control'; readonly control: Control }
  | { readonly kind: 'jack'; readonly jack: Address };

/** Some lines that belong together. */
export interface SheetGroup {
  readonly title: string;
  readonly items: readonly SheetItem[];
}

/** Everything that one can set at an owner, in signal order. Groups without a line are left out. */
export function sheetOf(rig: Rig, owner: Owner): SheetGroup[] {
  const own = [...controls(rig).values()].filter((control) => control.owner === owner);
  const outs = jacks(rig).outputs.filter((jack) => ownerOf(jack) === owner);
  const assigns = ['main', 'to', ...rig.desk.subgroups.map(({ id }) => id)].map(
    (name) => `${owner}.${name}`,
  );
  const auxes = rig.desk.auxes.map(({ id }) => `${owner}.${id}`);
  const isSend = ({ address }: Control) =>
    sendBusAt(rig, address) !== undefined ||
    auxes.some((send) => address === send || address === `${send}.tap`);
  const isOfPlugin = ({ address }: Control) => pluginAt(rig, address) !== undefined;
  const isInsert = (address: Address) => address.startsWith(`${owner}.insert.`);
  const isAssign = (one: Control) => assigns.includes(one.address) && !isSend(one);
  const isCord = ({ kind }: Control) => kind === 'cord';
  const isOneOf = (names: readonly string[]) => (one: Control) =>
    names.some((name) => one.address === `${owner}.${name}`) && !isSend(one);
  // A capture track chooses its input, a second path what feeds it, and the control room what it hears.
  const isChosenInput = isOneOf(['in', 'path', 'listen']);
  const isInput = (one: Control) => (isCord(one) && !isInsert(one.address)) || isChosenInput(one);
  const isSolo = isOneOf(['solo', 'safe', 'mode']);

  const asItems = (list: readonly Control[]): SheetItem[] =>
    list.map((control) => ({ kind: 'control', control }));
  const asJacks = (list: readonly Address[]): SheetItem[] =>
    list.map((jack) => ({ kind: 'jack', jack }));
  const groups: SheetGroup[] = [
    {
      title: 'Comes in',
      items: asItems(own.filter(isInput)),
    },
    {
      title: 'Insert',
      items: [
        ...asJacks(outs.filter(isInsert)),
        ...asItems(own.filter(({ address }) => isInsert(address))),
      ],
    },
    { title: 'Plug-ins', items: asItems(own.filter(isOfPlugin)) },
    {
      title: 'On the way',
      items: asItems(
        own.filter(
          (one) =>
            ![isInput, isCord, isOfPlugin, isSend, isAssign, isSolo].some((belongsElsewhere) =>
              belongsElsewhere(one),
            ),
        ),
      ),
    },
    { title: 'Solo', items: asItems(own.filter(isSolo)) },
    { title: 'Sends', items: asItems(own.filter(isSend)) },
    {
      title: 'Goes to',
      items: [...asItems(own.filter(isAssign)), ...asJacks(outs.filter((jack) => !isInsert(jack)))],
    },
  ];
  return groups.filter(({ items }) => items.length > 0);
}

/** Whether a rig has an owner by this name with something to set. */
export const hasOwner = (rig: Rig, owner: Owner): boolean =>
  [...controls(rig).values()].some((control) => control.owner === owner) ||
  jacks(rig).outputs.some((jack) => ownerOf(jack) === owner);

/** Some owners that belong together, for choosing one. */
export interface OwnerGroup {
  readonly title: string;
  readonly owners: readonly { readonly owner: Owner; readonly label: string }[];
}

const SECTIONS = [
  ['desk.', 'Desk'],
  ['rack.', 'Rack'],
  ['bay.', 'Bay'],
  ['box.', 'Box'],
  // Outputs of the converter have nothing to set: what is plugged into them is chosen at the other end.
  ['converter.in', 'Converter inputs'],
  ['out.', 'Outputs'],
] as const;

/** All owners of a rig that have something to set, section by section. */
export function ownerGroups(rig: Rig): OwnerGroup[] {
  const owners = [
    ...new Set([
      ...[...controls(rig).values()].map(({ owner }) => owner),
      ...jacks(rig).outputs.map(ownerOf),
    ]),
  ];
  return SECTIONS.map(([start, title]) => ({
    title,
    owners: owners
      .filter((owner) => owner.startsWith(start))
      .map((owner) => ({ owner, label: ownerLabel(rig, owner) })),
  })).filter(({ owners: some }) => some.length > 0);
}
