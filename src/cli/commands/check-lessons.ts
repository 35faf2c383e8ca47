import { checkCourse, parseCourse, readCourseFiles } from '../../course/index.ts';
import { counted } from '../../text/index.ts';
import type { Command } from '../command.ts';
import { ROOT } from '../root.ts';

export const checkLessons: Command = {
  name: 'check-lessons',
  summary: 'whether every task of the course does what its author says',
  operands: [],
  options: {},
  notes: [
    'Solutions pass, starts fail, each mistake fails its checks, questions have one key, and what a',
    'walk-through says is heard. The exit code is 1 with any complaint, 2 when a file cannot be read.',
  ],
  run: () => {
    const { course, errors } = parseCourse(readCourseFiles(ROOT));
    const [first] = errors;
    if (first) throw errors.length === 1 ? first : new AggregateError(errors);
    const complaints = checkCourse(course);
    const mistakes = complaints.filter(({ isWarning }) => !isWarning);
    return {
      lines: [
        ...complaints.map(
          ({ file, what, isWarning }) => `${file}: ${isWarning ? 'warning: ' : ''}${what}`,
        ),
        `${counted(course.holdings.length, 'file')}, ${counted(mistakes.length, 'complaint')}, ${counted(complaints.length - mistakes.length, 'warning')}.`,
      ],
      exitCode: mistakes.length > 0 ? 1 : 0,
    };
  },
};
