import * as z from 'zod/mini';
import type { PlaceInFile } from '../file/place.ts';
import type { Rig } from '../rig/schema.ts';
import { type Question, type QuestionData, questionSchema } from './question.ts';
import { type RigFinder, TaskReader, taskHead } from './task-file.ts';

/** The format of a quiz. No key is written down: it is what the simulator says. */
export const quizSchema = z.strictObject({
  ...taskHead,
  questions: z.array(questionSchema).check(z.minLength(1), z.maxLength(12)),
});

export interface Quiz {
  readonly id: string;
  readonly revision: number;
  readonly title: string;
  readonly rig: Rig;
  /** Owners that are drawn in questions whose drawing shows no way; all of the desk when left out. */
  readonly show?: readonly string[] | undefined;
  readonly questions: readonly Question[];
}

type QuizReader = TaskReader<z.output<typeof quizSchema>>;

/** Reads a quiz. @throws InputError with every problem. */
export function parseQuiz(file: string, text: string, findRig: RigFinder): Quiz {
  const reader = new TaskReader(file, text, quizSchema, findRig);
  const { data, rig } = reader;
  reader.shown(data.show);
  reader.uniqueIds(['questions'], data.questions);
  const questions = data.questions.map((question, index) =>
    readQuestion(reader, ['questions', index], question),
  );
  reader.finish();
  return { ...data, rig, questions };
}

function readQuestion(reader: QuizReader, at: PlaceInFile, question: QuestionData): Question {
  const { rig } = reader;
  const board = reader.board([...at, 'start'], {}, question.start);
  reader.source([...at, 'follow'], question.follow);
  reader.uniqueIds([...at, 'options'], question.options);
  const option = (index: number, name: string): PlaceInFile => [...at, 'options', index, name];
  switch (question.kind) {
    case 'statements':
      question.options.forEach(({ claim }, index) => {
        reader.claim(option(index, 'claim'), claim);
      });
      break;
    case 'number':
    case 'predict': {
      const { quantity } = question;
      reader.claim(
        [...at, 'quantity'],
        quantity.kind === 'level'
          ? { ...quantity, kind: 'absent' }
          : { ...quantity, kind: 'follows', toleranceDb: 0.1 },
      );
      question.options.forEach(({ asIf }, index) => {
        if (asIf) reader.board(option(index, 'asIf'), board, asIf);
      });
      break;
    }
    case 'outputs':
      question.options.forEach(({ output }, index) => {
        reader.place(option(index, 'output'), output);
      });
      break;
    case 'order':
      reader.place([...at, 'output'], question.output);
      question.options.forEach(({ stop }, index) => {
        reader.stop(option(index, 'stop'), stop);
      });
      break;
    case 'explain':
      question.options.forEach(({ at: place }, index) => {
        if (place !== undefined) reader.stop(option(index, 'at'), place);
      });
      break;
  }
  return { ...question, rig, board };
}
