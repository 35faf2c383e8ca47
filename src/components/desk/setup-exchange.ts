import {
  InputError,
  MAX_FILE_LENGTH,
  parseSetup,
  type Setup,
  setupData,
} from '../../../simulator/index.ts';

/** A setup that was opened, or what is wrong with its file, a line each. */
export type Opened = { readonly setup: Setup } | { readonly problems: readonly string[] };

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
  try {
    return { setup: parseSetup(file.name, await file.text()) };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return { problems: error.message.split('\n') };
  }
}

/** Hands a setup to the person as a file. */
export function saveSetup(setup: Setup): void {
  const text = `${JSON.stringify(setupData(setup), null, 2)}\n`;
  const address = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = `${setup.rig.id}.setup.json`;
  link.click();
  URL.revokeObjectURL(address);
}
