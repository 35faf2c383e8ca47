/** What the seeds of drills and hunts are made of: they stand in links. */
export const SEED = /^[a-z0-9]{1,12}$/;
