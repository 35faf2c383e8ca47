import { Later, useLater } from './later.ts';

const judging = new Later(() => import('./judging.ts'));

/** Follows what judges and explains: fetched when a task comes to life, and there before Check is pressed. */
export const useJudging = () => useLater(judging);
