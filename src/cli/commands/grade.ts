import {
  type CheckResult,
  grade as gradeBoard,
  InputError,
  placeText,
  readDocument,
  type Scenario,
  type Verdict,
} from '../../../simulator/index.ts';
import {
  claimSentence,
  heardSentence,
  movedLocksSentence,
  reasonSentence,
  resultWord,
  verdictSentence,
} from '../../text/index.ts';
import { ArgumentError } from '../argument-error.ts';
import { type Command, JSON_OPTION } from '../command.ts';
import { firstDifference } from '../first-difference.ts';
import { type InputSetup, readSetup, STANDARD_INPUT } from '../read-input.ts';
import { readScenario } from '../read-scenario.ts';
import { toJson } from '../terminal.ts';

/** How many reasons of a check are printed; the JSON has all. */
const MOST_REASONS = 3;

export const grade: Command = {
  name: 'grade',
  summary: 'a setup against a scenario, by what is heard',
  operands: ['SCENARIO', 'SETUP'],
  options: { json: JSON_OPTION },
  notes: [
    'SCENARIO is a file, or the id of a scenario of the course.',
    'The rig of the setup must be that of the scenario. The exit code is 1 when it is not passed.',
  ],
  run: async (call) => {
    const [named = '', from = ''] = call.operands;
    if (named === STANDARD_INPUT && from === STANDARD_INPUT) {
      throw new ArgumentError('desk grade', 'standard input once', 'it for both files');
    }
    const scenario = await readScenario('grade', named, call.input);
    const input = await readSetup(from, call.input);
    refuseOtherRig(scenario, input);
    const verdict = gradeBoard(scenario, input.setup.board);
    const lines = call.flag('json')
      ? toJson(verdictData(scenario, verdict)).split('\n')
      : verdictLines(scenario, verdict);
    return { lines, exitCode: verdict.passed ? 0 : 1 };
  },
};

/** @throws InputError when the setup stands on another rig than the scenario. */
function refuseOtherRig({ rig, id }: Scenario, { setup, file, text }: InputSetup): void {
  const difference = firstDifference(rig, setup.rig);
  if (!difference) return;
  const { at, expected, found } = difference;
  const place = ['rig', ...at];
  const line = readDocument(file, text).lineOf(place);
  throw new InputError(file, [
    {
      place: placeText(place),
      ...(line === undefined ? {} : { line }),
      expected: `${inShort(expected)}, as in the rig ${rig.id} of the scenario ${id}`,
      found: inShort(found),
      hint: 'A scenario is graded on its own rig only.',
    },
  ]);
}

/** A piece of a rig in a few words. */
function inShort(data: unknown): string {
  if (data === undefined) return 'nothing';
  if (Array.isArray(data)) return `a list of ${data.length}`;
  return typeof data === 'object' ? 'a map of keys' : JSON.stringify(data);
}

function verdictLines({ rig, title }: Scenario, verdict: Verdict): string[] {
  const moved = movedLocksSentence(rig, verdict.movedLocks);
  return [
    title,
    ...verdict.results.flatMap((result) => [
      '',
      `${resultWord(result.holds)}: ${claimSentence(rig, result.claim)}`,
      `  ${heardSentence(rig, result)}`,
      ...result.reasons.slice(0, MOST_REASONS).map((reason) => `  ${reasonSentence(rig, reason)}`),
    ]),
    '',
    ...(moved ? [moved] : []),
    verdictSentence(verdict),
  ];
}

function verdictData({ id, revision, rig }: Scenario, verdict: Verdict) {
  const resultData = ({ check, claim, holds, heard, reasons, ...judgement }: CheckResult) => ({
    id: check.id,
    weight: check.weight,
    passed: holds,
    claim,
    heard,
    reasons,
    sentences: {
      claim: claimSentence(rig, claim),
      heard: heardSentence(rig, { claim, holds, heard, reasons, ...judgement }),
      reasons: reasons.map((reason) => reasonSentence(rig, reason)),
    },
  });
  return {
    scenario: id,
    revision,
    passed: verdict.passed,
    score: verdict.score,
    of: verdict.of,
    movedLocks: verdict.movedLocks,
    checks: verdict.results.map(resultData),
  };
}
