import {
  InputError,
  MAX_FILE_LENGTH,
  parseSetup,
  type Rig,
  type Setup,
  setupData,
} from '../../../simulator/index.ts';
import { linkTo, setupOfLink } from '../../share/setup-link.ts';
import type { Linked } from '../../share/setup-text.ts';
import { handOverFile } from '../hand-over-file.ts';

/** What is wrong with a file or a link, a line each. */
export interface Problems {
  readonly problems: readonly string[];
}

/** A setup that was opened, or what is wrong with its file. */
export type Opened = { readonly setup: Setup } | Problems;

/** Reads a setup file that a person chose. A file over the cap is refused before it is read. */
export async function openSetup(file: File): Promise<Opened> {
  if (file.size > MAX_FILE_LENGTH * 4) {
    const found = `found ${file.size}`;
    return {
      problems: [
        `${file.name}: expected at most ${MAX_FILE_LENGTH} characters, but ${found} bytes. Is this the right file?`,
      ],
    };
  }
  return orProblems(async () => ({ setup: parseSetup(file.name, await file.text()) }));
}

/** Reads the fragment of an address that holds a setup. @param rig the rig of the page. */
export const openLink = (fragment: string, rig: Rig): Promise<Linked | Problems> =>
  orProblems(() => setupOfLink(fragment, rig));

/** The whole address of a setup on this page, copied for pasting where the browser allows that. */
export const copyLink = (
  setup: Setup,
  rig: Rig,
): Promise<{ readonly link: string; readonly isCopied: boolean } | Problems> =>
  orProblems(async () => {
    const link = new URL(await linkTo(setup, rig), window.location.href).href;
    const copying =
      navigator.clipboard?.writeText(link) ?? Promise.reject(new Error('No clipboard.'));
    const isCopied = await copying.then(
      () => true,
      () => false,
    );
    return { link, isCopied };
  });

/** What some work comes to, or else what is wrong with what was given to it. */
async function orProblems<Done>(work: () => Promise<Done>): Promise<Done | Problems> {
  try {
    return await work();
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return { problems: error.message.split('\n') };
  }
}

/** Hands a setup to the person as a file. */
export const saveSetup = (setup: Setup): void =>
  handOverFile(`${setup.rig.id}.setup.json`, `${JSON.stringify(setupData(setup), null, 2)}\n`);
