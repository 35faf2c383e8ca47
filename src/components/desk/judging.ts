/** All that Check needs, and what keeps what came of it, so that it is fetched in one. */

export { grade } from '../../../simulator/index.ts';
export { parSentence, verdictSentence } from '../../text/index.ts';
export { AnswerView } from './AnswerView.tsx';
export { KeptQuestion } from './KeptQuestion.tsx';
export { KeptTask } from './KeptTask.tsx';
export { VerdictView } from './VerdictView.tsx';
