/** All that a drill needs, so that it is fetched in one. */

export { drillName, readDrillName } from '../../share/drill-link.ts';
export { askForDrill } from './ask-worker.ts';
export { DrillTask } from './DrillTask.tsx';
