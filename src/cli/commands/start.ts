import { setupData } from '../../../simulator/index.ts';
import type { Command } from '../command.ts';
import { readScenario } from '../read-scenario.ts';
import { toJson } from '../terminal.ts';

export const start: Command = {
  name: 'start',
  summary: 'the setup that a scenario starts from, to edit and to grade',
  operands: ['SCENARIO'],
  options: {},
  notes: ['SCENARIO is a file, or the id of a scenario of the course. The output is a setup file.'],
  run: async ({ operands: [named = ''], input }) => {
    const { rig, start: board, title } = await readScenario('start', named, input);
    return { lines: toJson(setupData({ rig, board, title })).split('\n') };
  },
};
