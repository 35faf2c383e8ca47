import { LEVEL_UNITS, type LevelUnit } from '../../text/index.ts';
import { madeWhenChanged } from './drawn-when-changed.ts';
import { chooseLevelUnit } from './level-unit.ts';

/** What levels are read in, on all desks. */
export const UnitChoice = madeWhenChanged(({ unit }: { unit: LevelUnit }) => (
  <label>
    Levels in
    <select
      value={unit}
      onChange={({ currentTarget }) => chooseLevelUnit(currentTarget.value as LevelUnit)}
    >
      {LEVEL_UNITS.map((one) => (
        <option key={one}>{one}</option>
      ))}
    </select>
  </label>
));
