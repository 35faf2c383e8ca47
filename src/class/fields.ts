import * as z from 'zod/mini';
import { SEED } from '../../simulator/index.ts';

/** What assignments and hand-ins are made of. */

export const slug = z.string().check(z.regex(/^[a-z][a-z0-9-]*$/), z.maxLength(60));
export const line = (longest: number) => z.string().check(z.minLength(1), z.maxLength(longest));
export const revision = z.int().check(z.gte(1), z.lte(1_000_000));
export const seed = z.string().check(z.regex(SEED));
/** What {@link digestOf} gives. */
export const digest = z.string().check(z.regex(/^[0-9a-f]{16}$/));
export const count = z.int().check(z.gte(0), z.lte(1_000_000));
/** From 0 to 1. */
export const share = z.number().check(z.gte(0), z.lte(1));
/** A moment in milliseconds since 1970 UTC. It comes from the clock of whoever wrote the file. */
export const moment = z.int().check(z.gte(0), z.lte(8_640_000_000_000_000));
/** A span of time in milliseconds. */
export const span = z.int().check(z.gte(0), z.lte(8_640_000_000_000_000));
