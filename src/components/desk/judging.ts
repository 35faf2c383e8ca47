/** All that Check needs, and what keeps what came of it, so that it is fetched in one. */

export { boardOf } from '../../../simulator/index.ts';
export { AnswerView, judgeAnswer } from './AnswerView.tsx';
export { KeptTask } from './KeptTask.tsx';
export { judgeBoard, solutionsOf, TaskReview } from './TaskReview.tsx';
