import {
  levelOf,
  type Path,
  paths as pathsOf,
  type Setup,
  simulate,
  stopOf,
} from '../../../simulator/index.ts';
import { pathLine, pathRows, pathStory, pathsSentence, reasonSentence } from '../../text/index.ts';
import { type Command, JSON_OPTION, required } from '../command.ts';
import { readSetup } from '../read-input.ts';
import { placeNamed, sourceNamed } from '../rig-names.ts';
import { tableLines, toJson } from '../terminal.ts';

export const paths: Command = {
  name: 'paths',
  summary: 'the ways of a source to an output, stage by stage',
  operands: ['SETUP'],
  options: {
    source: {
      type: 'string',
      value: 'ID',
      isRequired: true,
      help: 'a track, or one side of it: piano.l',
    },
    output: { type: 'string', value: 'ID', isRequired: true, help: 'an output, or any place' },
    every: { type: 'boolean', help: 'also the places where nothing happens' },
    json: JSON_OPTION,
  },
  notes: ['The loudest way comes first. Where there is none, it is said where the source stops.'],
  run: async (call) => {
    const where = 'desk paths';
    const wanted = {
      source: required(paths, call, 'source'),
      output: required(paths, call, 'output'),
    };
    const { setup } = await readSetup(call.operands[0] ?? '', call.input);
    const solution = simulate(setup);
    const source = sourceNamed(where, solution, wanted.source);
    const output = placeNamed(where, setup.rig, solution, wanted.output);
    const ways = pathsOf(solution, source, output);
    const level = levelOf(solution, source, output);
    const stop = ways.length === 0 ? stopOf(solution, source, output) : undefined;
    if (call.flag('json')) {
      return { lines: toJson({ source, output, level, ways, stop }).split('\n') };
    }
    if (stop) {
      return { lines: [reasonSentence(setup.rig, { code: 'stops', source, output, stop })] };
    }
    const every = call.flag('every');
    return {
      lines: [
        pathsSentence(setup.rig, { source, output, ways, level }),
        ...ways.flatMap((path) => ['', ...wayLines(setup, path, every)]),
      ],
    };
  },
};

function wayLines(setup: Setup, path: Path, every: boolean): string[] {
  const rows = pathRows(setup, path, { every }).map(({ name, did, level }) => [name, did, level]);
  return [
    pathLine(setup.rig, path),
    pathStory(setup, path),
    ...tableLines(rows).map((line) => `  ${line}`),
  ];
}
