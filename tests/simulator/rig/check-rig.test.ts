import { describe, expect, test } from 'vitest';
import { InputError, type Problem } from '../../../simulator/file/input-error.ts';
import { smallRoom } from '../small-room.ts';

/** What is wrong with the small room after a change to its text. */
function problemsAfter(change: (text: string) => string): readonly Problem[] {
  try {
    smallRoom(change);
  } catch (error) {
    if (error instanceof InputError) return error.problems;
    throw error;
  }
  return [];
}

const replacing = (from: string, to: string) => (text: string) => {
  if (!text.includes(from)) throw new Error(`The small room has no ${from}.`);
  return text.replace(from, to);
};
const adding = (line: string) => (text: string) => `${text}  ${line}\n`;

const plugin = (id: string) => `{ id: ${id}, label: ${id}, kind: gain }`;

test('the small room itself has nothing wrong', () => {
  expect(problemsAfter((text) => text)).toEqual([]);
});

describe('reading a rig refuses', () => {
  test.each<[string, (text: string) => string, string, string]>([
    [
      'two tracks with one id',
      replacing('id: horn', 'id: viola'),
      'box.tracks[1].id',
      '"viola" a second time',
    ],
    [
      'a track and a bus with one id',
      replacing('id: heap', 'id: organ'),
      'box.buses[1].id',
      '"organ" a second time',
    ],
    [
      'a strip and an aux with one id',
      replacing('id: ears', 'id: b'),
      'desk.auxes[0].id',
      '"b" a second time',
    ],
    [
      'a subgroup and an aux with one id',
      replacing('id: band', 'id: late'),
      'desk.subgroups[0].id',
      '"late" a second time',
    ],
    [
      'two strip types with one id',
      replacing(
        '    - id: wide\n',
        '    - id: narrow\n      stages: [pan]\n      taps: { pre: pan, post: pan }\n    - id: wide\n',
      ),
      'desk.stripTypes[1].id',
      '"narrow" a second time',
    ],
    [
      'two devices with one id',
      replacing('id: boost', 'id: hall'),
      'rack[3].id',
      '"hall" a second time',
    ],
    [
      'two outputs with one id',
      replacing('id: cans', 'id: tape'),
      'outputs[1].id',
      '"tape" a second time',
    ],
    [
      'a track called main',
      replacing('id: viola', 'id: main'),
      'box.tracks[0].id',
      'the reserved "main"',
    ],
    [
      'a bus called none',
      replacing('id: stack', 'id: none'),
      'box.buses[0].id',
      'the reserved "none"',
    ],
    [
      'a bus called as an output',
      replacing('id: stack', 'id: out3-4'),
      'box.buses[0].id',
      'the reserved "out3-4"',
    ],
    [
      'a capture track with the id of a track',
      replacing('  buses:\n', '  captures:\n    - { id: horn, label: Again }\n  buses:\n'),
      'box.captures[0].id',
      '"horn" a second time',
    ],
    [
      'a capture track called main',
      replacing('  buses:\n', '  captures:\n    - { id: main, label: Mix }\n  buses:\n'),
      'box.captures[0].id',
      'the reserved "main"',
    ],
    [
      'two plug-ins of one track with one id',
      replacing(
        'levelDbfs: -23 }',
        `levelDbfs: -23, plugins: [${plugin('one')}, ${plugin('two')}, ${plugin('one')}] }`,
      ),
      'box.tracks[1].plugins[2].id',
      '"one" a second time',
    ],
    [
      'a plug-in called as a part of its track',
      replacing('levelDbfs: -23 }', `levelDbfs: -23, plugins: [${plugin('fader')}] }`),
      'box.tracks[1].plugins[0].id',
      'the reserved "fader"',
    ],
    [
      'a plug-in called as the sum of its bus',
      replacing('label: Heap }', `label: Heap, plugins: [${plugin('sum')}] }`),
      'box.buses[1].plugins[0].id',
      'the reserved "sum"',
    ],
    [
      'a plug-in called as a send of its track',
      (text) =>
        replacing(
          'label: Stack }',
          'label: Stack, tap: pre }',
        )(replacing('levelDbfs: -17 }', `levelDbfs: -17, plugins: [${plugin('stack')}] }`)(text)),
      'box.tracks[0].plugins[0].id',
      'the reserved "stack"',
    ],
    [
      'a bus that takes sends called as a part of a channel',
      replacing('id: stack, label: Stack }', 'id: mute, label: Stack, tap: post }'),
      'box.buses[0].id',
      'the reserved "mute"',
    ],
    [
      'a send to an earlier bus',
      (text) =>
        adding('box.heap.stack: -3')(replacing('label: Stack }', 'label: Stack, tap: pre }')(text)),
      'defaults["box.heap.stack"]',
      '"box.heap.stack"',
    ],
    [
      'a send to a bus that takes none',
      adding('box.viola.stack: -3'),
      'defaults["box.viola.stack"]',
      '"box.viola.stack"',
    ],
    [
      'a negative latency',
      replacing('fullScaleDbu: 21', 'fullScaleDbu: 21, latencyMs: -1'),
      'converter.latencyMs',
      '-1',
    ],
    [
      'a cord into an input that the converter lacks',
      adding('converter.in1: desk.late.out'),
      'defaults["converter.in1"]',
      '"converter.in1"',
    ],
    [
      'a strip called main',
      replacing('{ id: c,', '{ id: main,'),
      'desk.strips[2].id',
      'the reserved "main"',
    ],
    [
      'an aux called as a part of a strip',
      replacing('id: wash', 'id: pan'),
      'desk.auxes[1].id',
      'the reserved "pan"',
    ],
    [
      'a subgroup called as a part of a strip',
      replacing('id: band', 'id: insert'),
      'desk.subgroups[0].id',
      'the reserved "insert"',
    ],
    [
      'a strip of no known type',
      replacing('Hall return, type: wide', 'Hall return, type: broad'),
      'desk.strips[3].type',
      '"broad"',
    ],
    [
      'a tap on a stage that the strip lacks',
      replacing(
        'taps: { pre: insert, post: mute }\n    - id: wide',
        'taps: { pre: insert, post: mute }\n    - id: wider\n      stages: [pan]\n      taps: { pre: trim, post: pan }\n    - id: wide',
      ),
      'desk.stripTypes[1].taps.pre',
      'trim',
    ],
    [
      'a tap before the fader on a stage behind it',
      replacing(
        'taps: { pre: insert, post: mute }\n    - id: wide',
        'taps: { pre: mute, post: mute }\n    - id: wide',
      ),
      'desk.stripTypes[0].taps.pre',
      'mute',
    ],
    [
      'a tap before the fader on the fader itself',
      replacing(
        'taps: { pre: insert, post: mute }\n    - id: wide',
        'taps: { pre: fader, post: mute }\n    - id: wide',
      ),
      'desk.stripTypes[0].taps.pre',
      'fader',
    ],
    [
      'a tap after the fader on a stage before it',
      replacing(
        'taps: { pre: insert, post: mute }\n    - id: wide',
        'taps: { pre: insert, post: trim }\n    - id: wide',
      ),
      'desk.stripTypes[0].taps.post',
      'trim',
    ],
    [
      'a stage that stands twice',
      replacing(
        'stages: [trim, insert, fader, mute, pan]',
        'stages: [trim, insert, fader, trim, mute, pan]',
      ),
      'desk.stripTypes[1].stages',
      'trim twice',
    ],
    [
      'a strip without a pan',
      replacing('stages: [trim, insert, fader, mute, pan]', 'stages: [trim, insert, fader, mute]'),
      'desk.stripTypes[1].stages',
      'trim, insert, fader, mute',
    ],
    [
      'a mono insert behind the pan',
      replacing(
        'insert, fader, mute, pan]\n      taps: { pre: insert',
        'pan, insert, fader, mute]\n      taps: { pre: insert',
      ),
      'desk.stripTypes[0].stages',
      'trim, polarity, pan, insert, fader, mute',
    ],
    [
      'a compressor with fewer outputs than inputs',
      replacing('inputs: 2, outputs: 2', 'inputs: 2'),
      'rack[1].outputs',
      '1',
    ],
    [
      'a gain with more outputs than inputs',
      replacing('kind: gain', 'kind: gain, outputs: 2'),
      'rack[3].outputs',
      '2',
    ],
    [
      'a reverb with fewer outputs than inputs',
      replacing('kind: reverb, outputs: 2', 'kind: reverb, inputs: 2'),
      'rack[2].outputs',
      '1',
    ],
    [
      'a default for no control',
      adding('desk.d.fader: -3'),
      'defaults["desk.d.fader"]',
      '"desk.d.fader"',
    ],
    ['a default out of range', adding('desk.c.fader: 10.5'), 'defaults["desk.c.fader"]', '10.5'],
    [
      'a closed default where nothing closes',
      adding('desk.c.trim: -.inf'),
      'defaults["desk.c.trim"]',
      '"-inf"',
    ],
    ['a default of the wrong kind', adding('desk.c.mute: 1'), 'defaults["desk.c.mute"]', '1'],
    [
      'a default that is no option',
      adding('box.stack.to: out7'),
      'defaults["box.stack.to"]',
      '"out7"',
    ],
    [
      'a pair of one output',
      adding('box.stack.to: out4-4'),
      'defaults["box.stack.to"]',
      '"out4-4"',
    ],
    [
      'a pair of which the converter has one output only',
      adding('box.stack.to: out6-7'),
      'defaults["box.stack.to"]',
      '"out6-7"',
    ],
    [
      'a mono track on a pair of inputs',
      (text) =>
        adding('box.again.in: in1-2')(
          replacing(
            'outputs: 6,',
            'outputs: 6, inputs: 2,',
          )(
            replacing(
              '  buses:\n',
              '  captures:\n    - { id: again, label: Again }\n  buses:\n',
            )(text),
          ),
        ),
      'defaults["box.again.in"]',
      '"in1-2"',
    ],
    [
      'a cord from a jack that is not there',
      adding('desk.c.in: rack.spare.out'),
      'defaults["desk.c.in"]',
      '"rack.spare.out"',
    ],
    [
      'a cord into a jack that is not there',
      adding('rack.spare.in: desk.late.out'),
      'defaults["rack.spare.in"]',
      '"rack.spare.in"',
    ],
    [
      'a cord into the side of a mono jack',
      adding('rack.boost.in.l: desk.late.out'),
      'defaults["rack.boost.in.l"]',
      '"rack.boost.in.l"',
    ],
    [
      'a device in two places',
      (text) =>
        adding('desk.b.insert.return: rack.squash.out')(
          adding('desk.a.insert.return: rack.squash.out')(text),
        ),
      'defaults["desk.b.insert.return"]',
      'rack.squash.out plugged into both desk.a.insert.return and desk.b.insert.return',
    ],
    [
      'a device fed from two places',
      (text) =>
        adding('rack.squash.in: desk.b.insert.send')(
          adding('rack.squash.in: desk.a.insert.send')(text),
        ),
      'defaults',
      'the key rack.squash.in a second time',
    ],
    [
      'two cords out of one jack',
      adding('desk.c.in: converter.out2'),
      'defaults["desk.c.in"]',
      'converter.out2 plugged into both desk.b.in and desk.c.in',
    ],
  ])('%s', (_rule, change, place, found) => {
    const problems = problemsAfter(change);
    expect(problems.map((problem) => [problem.place, problem.found])).toEqual([[place, found]]);
    // Where it stands and what to do instead: a hint, or what was expected where that says it all.
    expect(problems[0]?.line).toBeGreaterThan(0);
    expect(problems[0]?.expected).not.toBe('');
  });

  test.each<[string, (text: string) => string, string, string]>([
    ['an id', replacing('id: horn', 'id: viola'), 'an id of its own', 'Rename one.'],
    [
      'a tap on a stage that the strip lacks',
      replacing('stages: [trim, insert, fader, mute, pan]', 'stages: [insert, fader, pan]'),
      'a stage of the strip',
      'Name one of insert, fader, pan.',
    ],
    [
      'a tap behind the fader',
      replacing('pre: insert, post: mute }\n  strips', 'pre: pan, post: mute }\n  strips'),
      'a stage before the fader',
      'Name one of trim, insert.',
    ],
    [
      'a tap behind a fader that stands first',
      replacing('stages: [trim, insert, fader, mute, pan]', 'stages: [fader, insert, mute, pan]'),
      'a stage before the fader',
      'Put a stage before the fader, such as trim.',
    ],
    [
      'a device in two places',
      adding('desk.c.in: converter.out2'),
      'one cord from each output jack',
      'Unplug one of the two with "none".',
    ],
    [
      'a cord to nowhere',
      adding('desk.c.in: converter.out7'),
      'one of its options',
      'Nearest: converter.out1, converter.out2, converter.out3.',
    ],
    [
      'a pair of one',
      adding('box.stack.to: out6-7'),
      'one of its options',
      'Nearest: out6, out1-2, out2-3.',
    ],
  ])('%s, and says what to do', (_, change, expected, hint) => {
    expect(problemsAfter(change)).toMatchObject([{ expected, hint }]);
  });

  test('a default for no control with the three nearest addresses as its hint', () => {
    const [problem] = problemsAfter(adding('desk.c.fadr: -3'));
    expect(problem?.hint).toBe('Nearest: desk.c.fader, desk.a.fader, desk.b.fader.');
  });

  test('every wrong default, but gives hints for the first eight only', () => {
    const lines = Array.from({ length: 11 }, (_, index) => `  desk.x${index}.fader: -1`).join('\n');
    const problems = problemsAfter((text) => `${text}${lines}\n`);
    expect(problems).toHaveLength(11);
    expect(problems.filter(({ hint }) => hint !== undefined)).toHaveLength(8);
  });
});

test('a mono strip may have its insert before its pan, and gains behind it', () => {
  const change = replacing(
    '[trim, polarity, insert, fader, mute, pan]',
    '[trim, insert, pan, fader, mute]',
  );
  expect(problemsAfter(change)).toEqual([]);
});

test('a send may be taken behind the fader itself, and anywhere on a strip without one', () => {
  const taps = replacing(
    'pre: insert, post: mute }\n  strips',
    'pre: insert, post: fader }\n  strips',
  );
  expect(problemsAfter(taps)).toEqual([]);
  const without = replacing('[trim, insert, fader, mute, pan]', '[insert, mute, pan]');
  expect(problemsAfter(without)).toEqual([]);
});

test('two tracks may have plug-ins of one id, and one of a bus that no send goes to from there', () => {
  const change = (text: string) =>
    replacing(
      'levelDbfs: -17 }',
      `levelDbfs: -17, plugins: [${plugin('heap')}] }`,
    )(replacing('levelDbfs: -23 }', `levelDbfs: -23, plugins: [${plugin('heap')}] }`)(text));
  expect(problemsAfter(change)).toEqual([]);
});
