/**
 * TRB-1: on a linear path of n suspects the half-split method needs at most ⌈log₂ n⌉ checks. The method: US Army
 * subcourse IT0338, Introduction to Logical Troubleshooting (1996), frame 10. The bound follows from it: a check
 * with two outcomes leaves at least half of what fitted.
 */
import { describe, expect, test } from 'vitest';
import { parseRig } from '../../simulator/board/setup-file.ts';
import type { HuntFault } from '../../simulator/puzzle/hunt/fault.ts';
import { Strategy } from '../../simulator/puzzle/hunt/strategy.ts';
import { lineUp } from '../../simulator/puzzle/hunt/suspects.ts';
import { simulate } from '../../simulator/solve/simulate.ts';

/** Suspects on the path, and the checks that the table gives for them. */
const TABLE = [
  [2, 1],
  [3, 2],
  [5, 3],
  [9, 4],
  [17, 5],
] as const;
const PLUGINS = 16;

/** A track with so many plug-ins one after the other, each at unity, before its fader. */
const CHAIN = parseRig(
  'chain.yaml',
  `id: chain
label: A chain
box:
  tracks:
    - id: cello
      label: Cello
      levelDbfs: -20
      plugins:
${Array.from({ length: PLUGINS }, (_, index) => `        - { id: p${index + 1}, label: Stage ${index + 1}, kind: gain }`).join('\n')}
converter: { outputs: 1, fullScaleDbu: 22 }
desk:
  stripTypes: [{ id: mono, stages: [trim, fader, pan], taps: { pre: trim, post: fader } }]
  strips: [{ id: ch1, mark: "1", label: Cello, type: mono }]
outputs: [{ id: capture, label: Capture, stereo: true }]
defaults:
  box.cello.to: out1
  desk.ch1.in: converter.out1
  out.capture.l: desk.main.out.l
  out.capture.r: desk.main.out.r
`,
);

/** The first so many stages of the chain, each dead in its turn, and how to tell which by reading levels. */
function chainOf(count: number) {
  const setup = { rig: CHAIN, board: {} };
  const meant = simulate(setup);
  const inChain = /^box\.cello\.(p\d+\.gain|fader)$/;
  const stages = meant.circuit.stages.map(({ id }) => id).filter((id) => inChain.test(id));
  const faults = stages.slice(0, count).map((at): HuntFault => ({ kind: 'dead', at }));
  const line = lineUp(setup, meant, faults, 'cello');
  return { line, strategy: new Strategy(line.tests, line.suspects.length) };
}

describe('half-split on a plain chain (IT0338 frame 10)', () => {
  test.each(TABLE)('%i suspects take %i checks in the worst case', (suspects, checks) => {
    const { line, strategy } = chainOf(suspects);
    expect(line.suspects).toHaveLength(suspects);
    expect(strategy.isExact).toBe(true);
    expect(strategy.worstOf(line.suspects.map((_, index) => index))).toBe(checks);
  });

  test('the first check of 16 parts them into two halves of 8', () => {
    const { line, strategy } = chainOf(16);
    const step = strategy.bestFor(line.suspects.map((_, index) => index));
    const outcomes = line.tests[step?.test ?? -1] ?? [];
    const sizes = [...new Set(outcomes)].map(
      (outcome) => outcomes.filter((one) => one === outcome).length,
    );
    expect(sizes).toEqual([8, 8]);
  });
});
