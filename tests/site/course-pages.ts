import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Locator, Page } from '@playwright/test';
import { type Course, readCourse } from '../../src/course/index.ts';
import { expect } from './fixture.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

/** The course as it stands on disk. */
export const course: Course = readCourse(ROOT);

/** What its ids begin with on a page, by the component that shows it. */
const PREFIX = { Task: 'task', Quiz: 'quiz', WalkThrough: 'walk' } as const;
type Component = keyof typeof PREFIX;

/** Pages of the course by the file with their prose. */
const PAGES: ReadonlyMap<string, string> = new Map([
  ...course.lessons.map((slug) => [`lessons/lessons/${slug}.mdx`, `/lessons/${slug}/`] as const),
  ['lessons/articles/numbers.mdx', '/numbers/'],
]);

/** Address of the page that shows a task. @throws Error when no lesson or article of the course does. */
export function pageOf(component: Component, id: string): string {
  for (const [file, address] of PAGES) {
    const text = readFileSync(`${ROOT}/${file}`, 'utf8');
    if (new RegExp(`<${component}\\s[^>]*\\bid="${id}"`).test(text)) return address;
  }
  throw new Error(`Expected a page of the course to show ${component} ${id}, but none does.`);
}

/** A task on a page. Its desk is the one whose fields begin with its id. */
export interface TaskOnPage {
  readonly page: Page;
  readonly id: string;
  readonly section: Locator;
}

/** Finds a task on the page that is open. */
export function taskOnPage(page: Page, component: Component, id: string): TaskOnPage {
  const onPage = `${PREFIX[component]}-${id}`;
  const title = page.locator(`#${onPage}-title`);
  return { page, id: onPage, section: page.locator('section', { has: title }).last() };
}

/** Waits until a task has come to life, as it does when it comes into sight. */
export async function seeAlive({ page, id }: TaskOnPage): Promise<void> {
  const title = page.locator(`#${id}-title`);
  await expect(page.locator('astro-island', { has: title })).toHaveCount(1);
  await expect(page.locator('astro-island[ssr]', { has: title })).toHaveCount(0);
}

/** What stands in the prose of a lesson to be walked through, solved and answered, in order. */
export function worksIn(lesson: string): { readonly component: Component; readonly id: string }[] {
  const prose = readFileSync(`${ROOT}/lessons/lessons/${lesson}.mdx`, 'utf8');
  return [...prose.matchAll(/<(Task|Quiz|WalkThrough)\s[^>]*\bid="([a-z][a-z0-9-]*)"/g)].map(
    ([, component, id = '']) => ({ component: component as Component, id }),
  );
}

/**
 * Opens the page of a task at the task itself, so that the first Tab leads into it, and waits until it
 * has come to life.
 */
export async function openTask(page: Page, component: Component, id: string): Promise<TaskOnPage> {
  const task = taskOnPage(page, component, id);
  await page.goto(`${pageOf(component, id)}#${task.id}-title`);
  await seeAlive(task);
  return task;
}

/** White space as a person sees it: one space. */
export const plain = (text: string): string => text.replace(/\s+/g, ' ').trim();
