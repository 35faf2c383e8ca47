import { HUNT_LEVELS, hunt as huntOf, SEED } from '../../../simulator/index.ts';
import { readCourse } from '../../course/index.ts';
import { HUNT_ROOM } from '../../share/hunt-link.ts';
import {
  complainerWords,
  complaintWords,
  faultText,
  placeName,
  sentence,
  strategySentence,
  suspectText,
} from '../../text/index.ts';
import { ArgumentError } from '../argument-error.ts';
import { type Command, JSON_OPTION } from '../command.ts';
import { ROOT } from '../root.ts';
import { toJson } from '../terminal.ts';

export const hunt: Command = {
  name: 'hunt',
  summary: 'a fault hunt of a level and a seed: the complaint, the suspects, the best strategy',
  operands: ['LEVEL', 'SEED'],
  options: {
    solve: { type: 'boolean', help: 'all suspects, and what it was' },
    json: JSON_OPTION,
  },
  notes: [
    `A level is 1 to ${HUNT_LEVELS.length}; a seed, 1 to 12 of a-z and 0-9. The same two are the same hunt anywhere.`,
  ],
  run: ({ operands: [level = '', seed = ''], flag }) => {
    const levels = HUNT_LEVELS.map((_, index) => `${index + 1}`);
    if (!levels.includes(level)) {
      throw new ArgumentError('desk hunt', `a level from 1 to ${levels.length}`, `"${level}"`);
    }
    if (!SEED.test(seed)) {
      throw new ArgumentError('desk hunt', 'a seed of 1 to 12 of a-z and 0-9', `"${seed}"`);
    }
    const rig = readCourse(ROOT).rigs.get(HUNT_ROOM);
    if (!rig) throw new RangeError(`Expected the room ${HUNT_ROOM} in the course, found none.`);
    const { setup, complaint, source, suspects, best, strategy, fault, places } = huntOf(
      rig,
      Number(level),
      seed,
    );
    const first = strategy.bestFor(suspects.map((_, index) => index));
    const firstPlace = first && places[first.test];
    const solved = flag('solve');
    if (flag('json')) {
      const told = {
        complaint,
        source,
        suspects: suspects.length,
        best,
        isExact: strategy.isExact,
      };
      const more = solved ? { firstPlace, fault, line: suspects } : {};
      return { lines: toJson({ ...told, ...more }).split('\n') };
    }
    const lines = [
      complainerWords(rig, complaint),
      `  ${complaintWords(rig, complaint)}`,
      strategySentence({ suspects, best, strategy }),
    ];
    if (!solved) return { lines };
    return {
      lines: [
        ...lines,
        ...(firstPlace
          ? [sentence(`The first reading is best taken behind ${placeName(rig, firstPlace)}`)]
          : []),
        ...suspects.map(({ faults }) => `  ${sentence(suspectText(setup, faults))}`),
        sentence(`It was this: ${faultText(setup, fault)}`),
      ],
    };
  },
};
