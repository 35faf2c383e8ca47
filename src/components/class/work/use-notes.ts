import { useEffect, useRef } from 'preact/hooks';
import { interactionOf } from '../../../class/interaction-of.ts';
import { workOn } from '../../../class/work.ts';
import type { KeptTaskProps } from '../../desk/KeptTask.tsx';
import { useSettled } from '../../desk/use-settled.ts';
import { moveEvents } from './log-moves.ts';
import { useTimeSpent } from './use-time-spent.ts';
import type { WorkHand } from './work-hand.ts';

/**
 * Notes in the work every attempt at an item, every hint, every move once the hand rests, and the time it stood open.
 *
 * @param isReady whether the item stands as it was left: what led there is nothing that was done.
 */
export function useNotes(
  { task, running, pristine }: KeptTaskProps,
  hand: WorkHand,
  isReady: boolean,
): void {
  const { answer, hintsShown, checked } = running.snapshot.context;
  const { judged } = running;
  const { item, send: note, work } = hand;
  const begun = useRef(workOn(work, item.id)).current;
  const since = (at: number) => Math.max(at - work.startedAt, 0);
  const log = (what: string) =>
    note({ type: 'log.note', events: [{ at: since(Date.now()), item: item.id, what }] });

  // biome-ignore lint/correctness/useExhaustiveDependencies: an item is opened once.
  useEffect(() => log('item.open'), []);

  const counted = useRef({ checked: undefined as typeof checked, attempts: begun.attempts });
  const started = useRef(Date.now());
  // biome-ignore lint/correctness/useExhaustiveDependencies: an attempt is noted once, when it has been judged.
  useEffect(() => {
    if (!checked || !judged || counted.current.checked === checked) return;
    const attempt = counted.current.attempts + 1;
    counted.current = { checked, attempts: attempt };
    const answered = Date.now();
    const kind = 'checks' in task ? item.task.kind : task.kind;
    const told = {
      item: item.id,
      kind,
      weight: item.weight,
      attempt,
      hints: hintsShown,
      started: started.current,
      answered,
    };
    started.current = answered;
    log('check');
    const interaction = interactionOf(told, task, checked.answer);
    note({ type: 'attempt.note', item: item.id, answer: checked.answer, interaction });
  }, [checked, judged]);

  const hinted = useRef(begun.hintsShown);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a hint is noted when it is shown.
  useEffect(() => {
    for (; hinted.current < hintsShown; hinted.current++) {
      log('hint.show');
      note({ type: 'hint.note', item: item.id });
    }
  }, [hintsShown]);

  const settled = useSettled(answer);
  const logged = useRef(begun.answer ?? pristine);
  // biome-ignore lint/correctness/useExhaustiveDependencies: moves are noted once the hand rests.
  useEffect(() => {
    if (!isReady || settled === logged.current) return;
    const events = moveEvents(item.id, task, logged.current, settled, since(Date.now()));
    logged.current = settled;
    if (events.length > 0) note({ type: 'log.note', events });
  }, [isReady, settled]);

  useTimeSpent((ms) => note({ type: 'time.note', item: item.id, ms }));
}
