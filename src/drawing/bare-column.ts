import type { Owner } from '../../simulator/index.ts';
import type { Column } from './drawing.ts';

/** A column with nothing on it yet; its names stand at the top of the desk. */
export const bareColumn = (owner: Owner, kind: Column['kind'], x: number): Column => ({
  owner,
  kind,
  x,
  top: 0,
  mark: '',
  label: '',
  input: undefined,
  wires: [],
  stages: [],
  inserts: [],
  faders: [],
  sends: [],
  assigns: [],
  toggles: [],
  choices: [],
  sideJacks: [],
  pathSwitch: undefined,
  foot: undefined,
});
