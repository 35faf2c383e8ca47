/** All that shows an assignment as learners get it or as it is printed, so that it is fetched in one. */

export { Looking } from './Looking.tsx';
