/** Version of the simulator, as hand-ins name it: it rises when the same answer to the same task may be marked otherwise. */
export const SIMULATOR_VERSION = 1;
