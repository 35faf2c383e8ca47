/** What a lesson has to be worked at, so that its code is asked for in one. */

export { QuizCard } from './QuizCard.tsx';
export { TaskDesk } from './TaskDesk.tsx';
