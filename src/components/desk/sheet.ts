import {
  type Address,
  type Control,
  controls,
  jacks,
  type Owner,
  ownerLabel,
  ownerOf,
  type Rig,
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
  const sends = rig.desk.auxes.map(({ id }) => `${owner}.${id}`);
  const assigns = ['main', 'to', ...rig.desk.subgroups.map(({ id }) => id)].map(
    (name) => `${owner}.${name}`,
  );
  const isSend = ({ address }: Control) =>
    sends.some((send) => address === send || address === `${send}.tap`);
  const isInsert = (address: Address) => address.startsWith(`${owner}.insert.`);
  const isAssign = (one: Control) => assigns.includes(one.address) && !isSend(one);
  const isCord = ({ kind }: Control) => kind === 'cord';

  const asItems = (list: readonly Control[]): SheetItem[] =>
    list.map((control) => ({ kind: 'control', control }));
  const asJacks = (list: readonly Address[]): SheetItem[] =>
    list.map((jack) => ({ kind: 'jack', jack }));
  const groups: SheetGroup[] = [
    {
      title: 'Comes in',
      items: asItems(own.filter((one) => isCord(one) && !isInsert(one.address))),
    },
    {
      title: 'Insert',
      items: [
        ...asJacks(outs.filter(isInsert)),
        ...asItems(own.filter(({ address }) => isInsert(address))),
      ],
    },
    {
      title: 'On the way',
      items: asItems(own.filter((one) => !isCord(one) && !isSend(one) && !isAssign(one))),
    },
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
  ['desk', 'Desk'],
  ['rack', 'Rack'],
  ['box', 'Box'],
  ['out', 'Outputs'],
] as const;

/** All owners of a rig that have something to set, section by section. */
export function ownerGroups(rig: Rig): OwnerGroup[] {
  const owners = [
    ...new Set([
      ...[...controls(rig).values()].map(({ owner }) => owner),
      ...jacks(rig).outputs.map(ownerOf),
    ]),
  ];
  return SECTIONS.map(([section, title]) => ({
    title,
    owners: owners
      .filter((owner) => owner.startsWith(`${section}.`))
      .map((owner) => ({ owner, label: ownerLabel(rig, owner) })),
  }));
}
