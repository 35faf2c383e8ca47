import { quizComplaints } from './check-quiz.ts';
import { scenarioComplaints } from './check-scenario.ts';
import { walkThroughComplaints } from './check-walk-through.ts';
import type { Course, Holding } from './course.ts';
import type { Remark } from './remark.ts';

/** Something about a file of the course that its author has to mend, or with a warning to look at. */
export interface Complaint extends Remark {
  readonly file: string;
  /** Id of the task. */
  readonly task: string;
}

/**
 * Holds every task of a course against what the simulator says: solutions pass, starts fail, mistakes
 * fail what they were written to fail, questions have one key, and what a walk-through says is heard.
 */
export function checkCourse(course: Course): Complaint[] {
  const { scenarios, quizzes, walkThroughs, holdings } = course;
  return holdings.flatMap((holding) => {
    const { file, kind, id } = holding;
    const remarks: Remark[] = [...nameRemarks(holding, holdings)];
    const [scenario, quiz, walkThrough] = [
      kind === 'scenario' ? scenarios.get(id) : undefined,
      kind === 'quiz' ? quizzes.get(id) : undefined,
      kind === 'walk-through' ? walkThroughs.get(id) : undefined,
    ];
    if (scenario) remarks.push(...scenarioComplaints(scenario));
    if (quiz) remarks.push(...quizComplaints(quiz));
    if (walkThrough) remarks.push(...walkThroughComplaints(walkThrough));
    return remarks.map((remark) => ({ file, task: id, ...remark }));
  });
}

/** An id is the name of its file, so that it is found and stands once. */
function nameRemarks({ file, kind, id }: Holding, holdings: readonly Holding[]): Remark[] {
  const name = file.slice(file.lastIndexOf('/') + 1).replace(/\.yaml$/, '');
  const first = holdings.find((other) => other.kind === kind && other.id === id);
  return [
    ...(name === id ? [] : [{ what: `the id ${id} is not the name of the file, ${name}` }]),
    ...(first?.file === file ? [] : [{ what: `the id ${id} is already that of ${first?.file}` }]),
  ];
}
