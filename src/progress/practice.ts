import {
  DRILL_CONCEPTS,
  DRILL_LEVELS,
  type DrillConcept,
  type DrillLevel,
  HUNT_LEVELS,
} from '../../simulator/index.ts';
import { DRILL_FRAGMENT, NEW_DRILL_FRAGMENT } from '../share/drill-fragment.ts';
import { drillName } from '../share/drill-link.ts';
import { huntLink, NEW_HUNT_FRAGMENT } from '../share/hunt-link.ts';
import { DRILL_NAMES } from '../text/drill-names.ts';
import type { CourseItem } from './course-item.ts';
import type { Kept } from './knowledge.ts';
import type { Moment, TaskName } from './task-record.ts';

/** The concept of the course that each kind of drill asks for. */
const ASKED: Readonly<Record<DrillConcept, string>> = {
  'insert-or-send': 'insert',
  'pre-or-post': 'pre-fader',
  'one-output-each': 'converter',
  'shared-outputs': 'main-feed',
  'order-across': 'signal-order',
  'returns-and-loops': 'loop',
  subgroups: 'subgroup',
  'pan-and-pairs': 'pan',
  'gain-staging': 'gain-staging',
  'bay-normals': 'normal',
  'polarity-and-latency': 'polarity',
  'solo-and-mute': 'solo-safe',
};

/** What all drills of a concept and level are kept under: each is another one, and they are one thing to learn. */
export const drillTask = (concept: DrillConcept, level: DrillLevel): TaskName => ({
  id: `drill-${concept}-${level}`,
  kind: 'drill',
  revision: 1,
  concept: ASKED[concept],
  unit: 'drills',
});

/** What all fault hunts of a level are kept under. */
export const huntTask = (level: number): TaskName => ({
  id: `fault-hunt-${level}`,
  kind: 'fault-hunt',
  revision: 1,
  concept: 'half-split',
  unit: 'fault-hunt',
});

/** Something that was left half done, and where it goes on. */
export interface LeftUndone {
  readonly item: CourseItem;
  readonly href: string;
  readonly at: Moment;
}

/** The drills and hunts that were left half done, those of one concept and level newest first. */
export const leftUndone = (items: readonly CourseItem[], { tasks }: Kept): readonly LeftUndone[] =>
  items.flatMap((item) =>
    (tasks.get(item.id)?.drafts ?? []).flatMap(({ seed, isFinished, at }) => {
      const href = seed === undefined || isFinished ? undefined : hrefOf(item, seed);
      return href === undefined ? [] : [{ item, href, at }];
    }),
  );

/** The address of a drill or hunt; nothing of what is neither. */
function hrefOf({ id }: CourseItem, seed: string): string | undefined {
  for (const concept of DRILL_CONCEPTS) {
    const level = DRILL_LEVELS.find((one) => drillTask(concept, one).id === id);
    if (level) return `/drills/${DRILL_FRAGMENT}${drillName({ concept, level, seed })}`;
  }
  const index = HUNT_LEVELS.findIndex((_, at) => huntTask(at + 1).id === id);
  return index < 0 ? undefined : `/fault-hunt/${huntLink({ level: index + 1, seed })}`;
}

/** All that can be practised without end, as things to be done: drills in the order of the course, then hunts. */
export const practiceItems = (): readonly CourseItem[] => [
  ...DRILL_CONCEPTS.flatMap((concept) =>
    DRILL_LEVELS.map((level) => ({
      ...drillTask(concept, level),
      title: `Drill: ${DRILL_NAMES[concept]}, level ${level}`,
      rig: 'drill-room',
      href: `/drills/${NEW_DRILL_FRAGMENT}${concept}.${level}`,
    })),
  ),
  ...HUNT_LEVELS.map((_, index) => ({
    ...huntTask(index + 1),
    title: `Fault hunt, level ${index + 1}`,
    rig: 'net-loft',
    href: `/fault-hunt/${NEW_HUNT_FRAGMENT}${index + 1}`,
  })),
];
