import type { Address } from '../../simulator/index.ts';
import type { SideJack } from './drawing.ts';
import type { Row } from './rows.ts';

/** How far above the end of its row a jack leaves the wire: below the stage, past an insert or the slot of a fader. */
const ABOVE_END = 4;
/** How far right of its wire a jack stands. */
const JACK_SIDE = 24;

/** An output jack that is taken after the stage of a row. */
export const sideJackAt = (jack: Address, x: number, { bottom }: Row): SideJack => ({
  jack,
  at: { x, y: bottom - ABOVE_END },
  end: { x: x + JACK_SIDE, y: bottom - ABOVE_END },
});
