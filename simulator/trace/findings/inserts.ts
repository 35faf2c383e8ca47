import { type Owner, ownerOf, part } from '../../rig/address.ts';
import { jacks } from '../../rig/jacks.ts';
import type { Finding } from './finding.ts';
import { idOf, loudestAt, placeOf, reachedFrom, type Survey, stagesAt } from './survey.ts';

const INSERT_SEND = /\.insert\.send(\.[lr])?$/;

/**
 * Inserts that go out and do not come back, and such that come back from elsewhere. A send that is not
 * returned is only split off, where the normal from send to return holds: a trick where it is heard by another way.
 */
export function findInserts(survey: Survey): Finding[] {
  const owners = new Set(
    jacks(survey.setup.rig)
      .outputs.filter((jack) => INSERT_SEND.test(jack))
      .map(ownerOf),
  );
  return [...owners].flatMap((owner) => insertOf(survey, owner));
}

function insertOf(survey: Survey, owner: Owner): Finding[] {
  const { wires } = survey.solution.circuit;
  const send = part(owner, 'insert.send');
  const back = part(owner, 'insert.return');
  const returns = stagesAt(survey, back);
  const sends = stagesAt(survey, send);
  const goals = sends.flatMap((stage) =>
    (survey.next[stage] ?? []).filter((to) => placeOf(survey, to) !== back),
  );
  const feeders = returns.flatMap((stage) => (wires[stage] ?? []).map(({ from }) => from));
  const origins = feeders.filter((from) => placeOf(survey, from) !== send);
  const passesOn = origins.length < feeders.length;
  const reached = reachedFrom(survey, goals);
  const comesBack = returns.some((stage) => reached.has(stage));
  if (comesBack) return [];

  const found: Finding[] = [];
  const follow = loudestAt(survey, send);
  const [goal] = goals;
  if (goal !== undefined) {
    found.push({
      code: 'insert-not-returned',
      severity: passesOn && goals.some((stage) => survey.heard[stage] === 1) ? 'note' : 'fault',
      owner,
      passesOn,
      goesTo: idOf(survey, goal),
      mendAt: idOf(survey, returns[0] ?? -1),
      follow,
    });
  }
  const [origin] = origins;
  if (origin !== undefined) {
    const comesFrom = idOf(survey, origin);
    const mendAt = idOf(survey, sends[0] ?? -1);
    found.push({ code: 'insert-not-sent', severity: 'fault', owner, comesFrom, mendAt, follow });
  }
  return found;
}
