import { expect, test } from 'vitest';
import { InputError } from '../../../simulator/file/input-error.ts';

test('InputError says file, line, place, what was expected and found, and the hint, a line a problem', () => {
  const error = new InputError('shed.yaml', [
    { place: 'box.tracks', line: 12, expected: 'a list', found: 'nothing', hint: 'Add one.' },
    { place: '', expected: 'a file', found: 'none' },
  ]);
  expect(error.message.split('\n')).toEqual([
    'shed.yaml:12 at box.tracks: expected a list, but found nothing. Add one.',
    'shed.yaml: expected a file, but found none.',
  ]);
  expect(error).toMatchObject({ name: 'InputError', file: 'shed.yaml' });
});
