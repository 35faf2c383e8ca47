/** Why an item has no mark but 0. */
export type NoMark =
  /** The hand-in has nothing of it, or no answer. */
  | { readonly code: 'no-answer' }
  /** What stands there cannot be read, or does not fit the task. */
  | { readonly code: 'unreadable'; readonly reason: string };

/** Something that an instructor should know of an item; it changes no mark. */
export type ItemNote =
  /** The assignment means one revision of the task, and it is marked by another. */
  | { readonly code: 'assigned-revision'; readonly assigned: number; readonly marked: number }
  /** It was worked on in one revision, and is marked by another. */
  | { readonly code: 'worked-revision'; readonly worked: number; readonly marked: number }
  /** Another drill was worked on than the learner was given; it is marked as the given one. */
  | { readonly code: 'other-seed'; readonly worked: string; readonly given: string }
  | { readonly code: 'attempts'; readonly most: number; readonly made: number }
  | { readonly code: 'hints'; readonly shown: number }
  /** A locked control was moved, which fails the task. */
  | { readonly code: 'moved-lock' };

/** Something that an instructor should know of a hand-in; it changes no mark. */
export type HandInNote =
  /** It was made for another wording of the assignment. */
  | { readonly code: 'other-wording' }
  /** It was made with another course or simulator than marked it. */
  | { readonly code: 'other-course' }
  | { readonly code: 'other-simulator'; readonly made: number; readonly marked: number }
  /** It has items that the assignment has not; they were not looked at. */
  | { readonly code: 'unknown-items'; readonly ids: readonly string[] }
  /** It says that it was handed in before it was begun. */
  | { readonly code: 'times' };

/** Something to look at. It says what is alike, and judges nobody: people also work side by side. */
export type Pointer =
  /** The same answer to drills that were not the same, and not right for all of them. */
  | { readonly code: 'same-answer'; readonly item: string; readonly learners: readonly string[] }
  /** The same log, to the millisecond. */
  | { readonly code: 'same-log'; readonly learners: readonly string[] }
  /** Several hand-ins under one code, and not one name. */
  | { readonly code: 'names'; readonly learner: string; readonly names: readonly string[] };
