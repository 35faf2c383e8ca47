/** What is wrong with a task, as the end of a sentence that begins with the task. */
export interface Remark {
  readonly what: string;
  /** Something to look at, that may stay as it is. */
  readonly isWarning?: true;
}
