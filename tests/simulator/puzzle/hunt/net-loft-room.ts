import { readFileSync } from 'node:fs';
import { parseRig } from '../../../../simulator/board/setup-file.ts';
import type { Rig } from '../../../../simulator/rig/schema.ts';

const FILE = new URL('../../../../lessons/rigs/net-loft.yaml', import.meta.url);

/** The room that hunts go on in. */
export const netLoft = (): Rig => parseRig('net-loft.yaml', readFileSync(FILE, 'utf8'));
