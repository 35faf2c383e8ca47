import { describe, expect, test } from 'vitest';
import {
  type Board,
  boardOf,
  findings,
  headroomAt,
  noiseAt,
  outputPlace,
  type Rig,
  simulate,
} from '../../simulator/index.ts';
import { course } from './the-course.ts';

// What lessons, tasks and walk-throughs say of peaks and noise in words. Claims of tasks speak of levels alone.

const headroomIn = (rig: Rig, board: Board, place: string): number =>
  headroomAt(simulate({ rig, board }), place)?.headroom ?? Number.NaN;

const noiseIn = (rig: Rig, board: Board, place: string): number =>
  noiseAt(simulate({ rig, board }), place) ?? Number.NaN;

const clipsIn = (rig: Rig, board: Board): string[] =>
  findings({ rig, board }, simulate({ rig, board })).flatMap((finding) =>
    finding.code === 'stage-clips' || finding.code === 'over-full-scale' ? finding.places : [],
  );

function walkThrough(id: string) {
  const found = course.walkThroughs.get(id);
  if (!found) throw new Error(`Expected a walk-through ${id}.`);
  const boardAt = (step: string): Board => {
    const one = found.steps.find((candidate) => candidate.id === step);
    if (!one) throw new Error(`Expected a step ${step} of ${id}.`);
    return one.board;
  };
  return { rig: found.rig, boardAt };
}

function scenario(id: string) {
  const found = course.scenarios.get(id);
  if (!found) throw new Error(`Expected a scenario ${id}.`);
  const proof = (name: string): Board => {
    const one = found.proofs.find((candidate) => candidate.name === name);
    if (!one) throw new Error(`Expected a proof “${name}” of ${id}.`);
    return one.board;
  };
  return { ...found, proof };
}

describe('blend-in-the-box', () => {
  const { rig, boardAt } = walkThrough('blend-in-the-box');

  test('the bus at +9 cuts peaks at outputs 1 and 2, and nowhere else; at unity nothing is cut', () => {
    expect(clipsIn(rig, boardAt('too-hot')).sort()).toEqual(['converter.out1', 'converter.out2']);
    expect(clipsIn(rig, boardAt('mended'))).toEqual([]);
  });

  test('low players: at +10 peaks are cut although the strips are pulled; what passes has headroom', () => {
    const task = scenario('low-players-on-two-strips');
    const pulled = task.proof('The bus left at +10, and the strips pulled instead');
    expect(headroomIn(task.rig, pulled, 'converter.out4')).toBeLessThan(0);
    expect(clipsIn(task.rig, task.solution)).toEqual([]);
  });
});

describe('the-staircase', () => {
  const { rig, boardAt } = walkThrough('the-staircase');

  test('the bass is cut behind its trim at +8, and nowhere when that is pulled', () => {
    expect(clipsIn(rig, boardAt('too-hot'))).toEqual(['desk.ch4.trim']);
    expect(clipsIn(rig, boardAt('cooler'))).toEqual([]);
  });

  test('lifted early the cello comes with less noise than lifted late', () => {
    const noise = (step: string) => noiseIn(rig, boardAt(step), outputPlace('capture'));
    expect(noise('late-lift') - noise('early-lift')).toBeGreaterThan(3);
  });

  test('a mute takes a strip and its noise off the bus, and an assign that is off takes more', () => {
    const noise = (values: Record<string, boolean>) =>
      noiseIn(rig, boardOf('it', rig, values), 'desk.main.sum.l');
    const muted = noise({ 'desk.ch5.mute': true, 'desk.ch6.mute': true });
    expect(muted).toBeLessThan(noise({}));
    expect(noise({ 'desk.ch5.main': false, 'desk.ch6.main': false })).toBeLessThan(muted);
  });

  test('three players: it hisses and crackles at the start, and less by some decibels and not at all in the end', () => {
    const { rig: room, start, solution } = scenario('three-players-one-staircase');
    const noise = (board: Board) => noiseIn(room, board, outputPlace('capture'));
    expect(noise(start) - noise(solution)).toBeGreaterThan(3);
    expect(clipsIn(room, start)).toEqual(['desk.ch4.trim']);
    expect(clipsIn(room, solution)).toEqual([]);
  });
});
