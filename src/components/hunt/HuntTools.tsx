import { useMemo } from 'preact/hooks';
import {
  type Address,
  faultId,
  type Hunt,
  type HuntEvent,
  type Owner,
} from '../../../simulator/index.ts';
import { capitalised, faultText, ownerName } from '../../text/index.ts';
import { huntSections, placeLabel } from './hunt-places.ts';

/** Where the hunter stands: at an owner, with one of its places and one of its faults chosen. */
export interface Spot {
  readonly owner: Owner;
  readonly place: Address | undefined;
  readonly fault: string | undefined;
}

interface Props {
  hunt: Hunt;
  spot: Spot;
  onSpot: (spot: Spot) => void;
  send: (event: HuntEvent) => void;
}

/** The meter and the accusation: first where, then what is read there or what is wrong with it. */
export function HuntTools({ hunt, spot, onSpot, send }: Props) {
  const { rig } = hunt.setup;
  const sections = useMemo(() => huntSections(hunt), [hunt]);
  const owners = sections.flatMap((section) => section.owners);
  const here = owners.find(({ owner }) => owner === spot.owner);
  const place = here?.places.find((one) => one === spot.place) ?? here?.places[0];
  const fault = here?.faults.find((one) => faultId(one) === spot.fault);
  return (
    <fieldset class="hunt-tools">
      <legend>Take the meter somewhere, or say what is wrong</legend>
      <p class="hunt-tool">
        <label for="hunt-owner">Where</label>
        <select
          id="hunt-owner"
          value={spot.owner}
          onChange={({ currentTarget }) =>
            onSpot({ owner: currentTarget.value, place: undefined, fault: undefined })
          }
        >
          {sections.map(({ name, owners: some }) => (
            <optgroup key={name} label={name}>
              {some.map(({ owner }) => (
                <option key={owner} value={owner}>
                  {capitalised(ownerName(rig, owner))}
                </option>
              ))}
            </optgroup>
          ))}
        </select>
      </p>
      <p class="hunt-tool">
        <label for="hunt-place">Read behind</label>
        <select
          id="hunt-place"
          value={place ?? ''}
          disabled={!place}
          onChange={({ currentTarget }) => onSpot({ ...spot, place: currentTarget.value })}
        >
          {here?.places.map((one) => (
            <option key={one} value={one}>
              {placeLabel(rig, one)}
            </option>
          ))}
        </select>
        <button
          type="button"
          class="button-main"
          disabled={!place}
          onClick={() => place && send({ type: 'probe.place', place })}
        >
          Read the level
        </button>
      </p>
      <p class="hunt-tool">
        <label for="hunt-fault">What is wrong</label>
        <select
          id="hunt-fault"
          value={spot.fault ?? ''}
          disabled={!here || here.faults.length === 0}
          onChange={({ currentTarget }) => onSpot({ ...spot, fault: currentTarget.value })}
        >
          <option value="">Choose…</option>
          {here?.faults.map((one) => (
            <option key={faultId(one)} value={faultId(one)}>
              {capitalised(faultText(hunt.setup, one))}
            </option>
          ))}
        </select>
        <button
          type="button"
          disabled={!fault}
          onClick={() => fault && send({ type: 'accuse', fault: faultId(fault) })}
        >
          That is it
        </button>
      </p>
    </fieldset>
  );
}
