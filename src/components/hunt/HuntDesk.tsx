import type { Rig } from '../../../simulator/index.ts';
import { laterView } from '../desk/later-view.tsx';

const HuntBench = laterView('The hunts', async () => (await import('./HuntBench.tsx')).HuntBench);

/** Hunts in a room. What the server rendered stands there at once, and comes to life when the code is there. */
export const HuntDesk = ({ rig }: { rig: Rig }) => <HuntBench rig={rig} />;
