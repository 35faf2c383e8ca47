/** All that Check needs, so that it is fetched in one. */

export { grade } from '../../../simulator/index.ts';
export { verdictSentence } from '../../text/index.ts';
export { AnswerView } from './AnswerView.tsx';
export { VerdictView } from './VerdictView.tsx';
