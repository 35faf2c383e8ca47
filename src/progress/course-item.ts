import type { TaskName } from './task-record.ts';

/** A task, or a question of a quiz, as the course holds it today. */
export interface CourseItem extends TaskName {
  readonly title: string;
  /** Id of the rig that it is set on. */
  readonly rig: string;
  /** Address of its place on its page. */
  readonly href: string;
}

/** A concept of the course. */
export interface Concept {
  readonly id: string;
  readonly term: string;
}

/** A lesson, as what is to be known. */
export interface Unit {
  readonly id: string;
  readonly title: string;
  readonly href: string;
  /** Ids of its items that show that one knows it: its free task and its questions. */
  readonly proof: readonly string[];
}

/** All that the memory knows of the course: its items in order, its concepts, and which are mistaken for one another. */
export interface CourseOutline {
  readonly items: readonly CourseItem[];
  /** What can be practised without end, outside of lessons: drills and fault hunts. */
  readonly practice: readonly CourseItem[];
  readonly units: readonly Unit[];
  readonly concepts: readonly Concept[];
  /** Groups of concepts that people mistake for one another. */
  readonly confusable: readonly (readonly string[])[];
}
