import { toJSONSchema } from 'zod/mini';
import {
  quizSchema,
  scenarioSchema,
  setupSchema,
  walkThroughSchema,
} from '../../simulator/index.ts';
import { assignmentSchema } from '../class/assignment.ts';
import { handInSchema } from '../class/hand-in.ts';

/** The file formats of the project, each with the schema that reads it. */
const FORMATS = {
  setup: {
    title: 'Setup',
    description: 'A rig and where its controls stand.',
    schema: setupSchema,
  },
  scenario: {
    title: 'Scenario',
    description: 'A graded routing task, with its solution and its likely mistakes.',
    schema: scenarioSchema,
  },
  quiz: {
    title: 'Quiz',
    description: 'Questions whose keys the simulator computes.',
    schema: quizSchema,
  },
  'walk-through': {
    title: 'Walk-through',
    description: 'A desk that moves step by step, and what is heard at each step.',
    schema: walkThroughSchema,
  },
  assignment: {
    title: 'Assignment',
    description: 'What an instructor asks of a class: tasks, weights, and what is allowed.',
    schema: assignmentSchema,
  },
  'hand-in': {
    title: 'Hand-in',
    description: 'What a learner gives back. Every answer in it is marked again.',
    schema: handInSchema,
  },
} as const;

/** Name of a file format. */
export type Format = keyof typeof FORMATS;

export const FORMAT_NAMES = Object.keys(FORMATS) as readonly Format[];

/** The JSON Schema of a format: of what its author writes, before defaults are filled in. */
export function jsonSchemaOf(format: Format): Readonly<Record<string, unknown>> {
  const { title, description, schema } = FORMATS[format];
  const { $schema, ...rest } = toJSONSchema(schema, { io: 'input' });
  return { $schema, title, description, ...rest };
}
