import type { Locator } from '@playwright/test';
import {
  type Answer,
  type AnswerOf,
  markAnswer,
  optionResults,
  type Question,
  rightAnswer,
} from '../../simulator/index.ts';
import { signed } from '../../src/text/index.ts';
import { optionsOf } from '../../src/text/question-options.ts';
import { expect } from './fixture.ts';
import { pressButton, tabTo } from './keyboard.ts';

/** A wrong answer to a question, and the right one. */
export function answersTo(question: Question): readonly [wrong: Answer, right: Answer] {
  const right = rightAnswer(question);
  const wrong = right && wrongAnswer(question, right);
  if (!right || !wrong || markAnswer(question.id, question, wrong).passed) {
    throw new Error(`Expected a right and a wrong answer to ${question.id}.`);
  }
  return [wrong, right];
}

function wrongAnswer(question: Question, right: Answer): Answer | undefined {
  const other = optionResults(question).find(({ holds }) => !holds);
  switch (right.kind) {
    case 'option':
      return other && { kind: 'option', option: other.id };
    case 'number':
      return { kind: 'number', value: Number(right.value) + 40 };
    case 'outputs':
      return { kind: 'outputs', outputs: right.outputs.slice(1).concat(other ? [other.id] : []) };
    case 'order':
      return { kind: 'order', order: right.order.toReversed() };
    default:
      return undefined;
  }
}

/** Gives an answer in the form of a question by keyboard alone. */
export async function giveAnswer(form: Locator, question: Question, answer: Answer): Promise<void> {
  switch (answer.kind) {
    case 'option':
      return choose(form, textOf(question, answer.option));
    case 'number':
      await tabTo(form.getByRole('textbox'));
      await form.page().keyboard.press('Control+a');
      return form.page().keyboard.type(signed(Number(answer.value)));
    case 'outputs':
      return tick(form, question, answer);
    case 'order':
      return putInOrder(form, question, answer);
    default:
      throw new Error(`Expected an answer to a question, but got a ${answer.kind}.`);
  }
}

/** What a person reads beside an option. */
const textOf = (question: Question, id: string): string =>
  optionsOf(question).find((option) => option.id === id)?.text ?? '';

/** Goes into the radio buttons of a question and on by arrows to the option with this text. */
async function choose(form: Locator, text: string): Promise<void> {
  const { keyboard } = form.page();
  const radios = form.getByRole('radio');
  const chosen = radios.and(form.page().locator(':checked'));
  const isFresh = (await chosen.count()) === 0;
  await tabTo(isFresh ? radios.first() : chosen);
  if (isFresh) await keyboard.press('Space');
  const wanted = form.getByRole('radio', { name: text, exact: true });
  for (let press = await radios.count(); press > 0; press -= 1) {
    if (await wanted.isChecked()) return;
    await keyboard.press('ArrowDown');
  }
  await expect(wanted).toBeChecked();
}

async function tick(form: Locator, question: Question, { outputs }: AnswerOf<'outputs'>) {
  for (const { id, text } of optionsOf(question)) {
    const box = form.getByRole('checkbox', { name: text, exact: true });
    if ((await box.isChecked()) === outputs.includes(id)) continue;
    await tabTo(box);
    await form.page().keyboard.press('Space');
    await expect(box).toBeChecked({ checked: outputs.includes(id) });
  }
}

async function putInOrder(form: Locator, question: Question, { order }: AnswerOf<'order'>) {
  const stops = form.locator('.stops > li');
  for (const [place, id] of order.entries()) {
    const text = textOf(question, id);
    const texts = await stops.locator('.stop-name').allTextContents();
    const steps = texts.indexOf(text) - place;
    if (steps === 0) continue;
    const up = stops.filter({ hasText: text }).getByRole('button').first();
    await pressButton(up);
    // The focus goes along.
    for (let step = 1; step < steps; step += 1) await form.page().keyboard.press('Enter');
    await expect(stops.nth(place)).toContainText(text);
    await expect(up).toBeFocused();
  }
}
