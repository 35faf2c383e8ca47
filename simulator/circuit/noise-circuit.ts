import { db, SILENCE } from '../units/level.ts';
import type { Circuit, Law, Signal, Stage, Wire } from './circuit.ts';

const SUM: Law = { kind: 'sum' };
/** Every signal has a crest. Noise goes beyond any now and then; beyond 12 dB only rarely. */
const NOISE_CREST = db(12);

/**
 * The circuit as its noises see it: no recording plays, and each stage that makes noise is fed by a signal of its
 * own. Every other law, wire and index is the same; the noises stand behind all other stages. The track of such a
 * signal is the place whose noise it is.
 */
export function noiseCircuit(circuit: Circuit): Circuit {
  const stages: Stage[] = circuit.stages.map((stage) =>
    stage.law.kind === 'source' ? { ...stage, law: SUM } : stage,
  );
  const wires: (readonly Wire[])[] = [...circuit.wires];
  const signals: Signal[] = [];
  for (const [stage, { noise }] of circuit.active) {
    const bearer = circuit.stages[stage];
    if (!bearer || noise === SILENCE) continue;
    const id = `${bearer.id}.noise`;
    const law: Law = { kind: 'source', level: noise };
    const born = stages.push({ id, place: id, leg: undefined, law }) - 1;
    wires[stage] = [...(circuit.wires[stage] ?? []), { from: born, ratio: 1 }];
    wires.push([]);
    signals.push({ id, track: bearer.place, stage: born, level: noise, crest: NOISE_CREST });
  }
  return { ...circuit, stages, wires, signals };
}
