import { useEffect, useMemo, useRef } from 'preact/hooks';
import {
  type Answer,
  boardOf,
  grade,
  movesBetween,
  optionResults,
  type Question,
  rightAnswer,
  type Scenario,
} from '../../../../simulator/index.ts';
import type { WorkItem } from '../../../class/work.ts';
import {
  answerText,
  counted,
  moveText,
  optionsOf,
  shareText,
  verdictSentence,
} from '../../../text/index.ts';
import { AnswerView } from '../../desk/AnswerView.tsx';
import { VerdictView } from '../../desk/VerdictView.tsx';
import type { MetTask } from './assigned-task.ts';

interface Props {
  met: MetTask;
  item: WorkItem;
  /** Why it cannot be answered any more, as a sentence. */
  why: string;
  showsSolution: boolean;
}

/** An item that cannot be answered any more: what was asked, the answer that counts, and the solution where it may be seen. */
export function ItemReview({ met, item, why, showsSolution }: Props) {
  const heading = useRef<HTMLParagraphElement>(null);
  useEffect(() => heading.current?.focus(), []);
  const answer = item.best?.answer ?? item.answer;
  return (
    <section class="item-review" aria-label="What counts">
      <p ref={heading} tabIndex={-1} class="verdict-head">
        {why}{' '}
        {item.best
          ? `The best of ${counted(item.attempts, 'attempt')} counts: ${shareText(item.best.score)}.`
          : 'No answer was checked.'}
      </p>
      {met.kind === 'board' ? (
        <BoardReview scenario={met.scenario} answer={answer} showsSolution={showsSolution} />
      ) : (
        <QuestionReview
          question={met.question}
          answer={answer}
          attempts={item.attempts}
          showsSolution={showsSolution}
        />
      )}
    </section>
  );
}

interface BoardProps {
  scenario: Scenario;
  answer: Answer | undefined;
  showsSolution: boolean;
}

function BoardReview({ scenario, answer, showsSolution }: BoardProps) {
  const { rig, start, solution, brief, debrief } = scenario;
  const verdict = useMemo(
    () => answer?.kind === 'board' && grade(scenario, boardOf(scenario.id, rig, answer.board)),
    [scenario, rig, answer],
  );
  return (
    <>
      {brief.map((words) => (
        <p key={words}>{words}</p>
      ))}
      {verdict && (
        <>
          <p>{verdictSentence(verdict)}</p>
          <VerdictView rig={rig} verdict={verdict} isStale={false} />
        </>
      )}
      {showsSolution && (
        <>
          <h4>One solution</h4>
          <ul>
            {movesBetween(rig, start, solution).map((move) => (
              <li key={move.control.address}>{moveText(rig, move)}</li>
            ))}
          </ul>
          <p class="debrief">{debrief}</p>
        </>
      )}
    </>
  );
}

interface QuestionProps {
  question: Question;
  answer: Answer | undefined;
  attempts: number;
  showsSolution: boolean;
}

function QuestionReview({ question, answer, attempts, showsSolution }: QuestionProps) {
  const right = rightAnswer(question);
  const options = optionsOf(question);
  return (
    <>
      <p>{question.ask}</p>
      {answer && (
        <>
          <p>Your answer: {answerText(options, answer)}</p>
          <AnswerView question={question} checked={{ answer, attempt: attempts }} />
        </>
      )}
      {showsSolution && right && (
        <>
          <h4>The answer</h4>
          <p>{answerText(options, right)}</p>
          <ul>
            {optionResults(question)
              .filter(({ holds }) => holds)
              .map(({ id, reason }) => (
                <li key={id}>{reason}</li>
              ))}
          </ul>
          <p class="debrief">{question.explain}</p>
        </>
      )}
    </>
  );
}
