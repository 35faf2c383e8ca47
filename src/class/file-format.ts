import { type FileDocument, InputError } from '../../simulator/index.ts';

/** What kind of file it is that the project writes, in its own words. */
export interface FileFormat {
  readonly format: string;
  readonly version: number;
  /** `an assignment` */
  readonly name: string;
}

/**
 * Refuses a file of another kind, or of another version, before everything that differs in it is listed.
 *
 * @throws InputError
 */
export function refuseOtherFormat({ file, data }: FileDocument, expected: FileFormat): void {
  const has = (key: string): unknown =>
    typeof data === 'object' && data !== null ? Reflect.get(data, key) : undefined;
  const [format, version] = [has('format'), has('version')];
  if (format !== expected.format) {
    const found = typeof format === 'string' ? `"${format.slice(0, 60)}"` : 'another file';
    throw new InputError(file, [
      {
        place: 'format',
        expected: `"${expected.format}", as ${expected.name} has it`,
        found,
        hint: 'Is this the right file?',
      },
    ]);
  }
  if (typeof version !== 'number' || version <= expected.version) return;
  throw new InputError(file, [
    {
      place: 'version',
      expected: `version ${expected.version} or an earlier one`,
      found: `version ${version}`,
      hint: 'It was made by a newer version of this site: load the page anew.',
    },
  ]);
}
