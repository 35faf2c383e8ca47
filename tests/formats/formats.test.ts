import { expect, test } from 'vitest';
import { fieldTables } from '../../src/formats/field-tables.ts';
import { FORMAT_NAMES, jsonSchemaOf } from '../../src/formats/formats.ts';
import { setupExample } from '../../src/formats/setup-example.ts';

test.each(FORMAT_NAMES)(
  'jsonSchemaOf() of %s is titled, closed to unknown keys, and without $id',
  (format) => {
    const schema = jsonSchemaOf(format);
    expect(schema).toMatchObject({ type: 'object', additionalProperties: false });
    expect(schema['title']).toMatch(/\S/);
    expect(schema['description']).toMatch(/\S/);
    expect(schema).not.toHaveProperty('$id');
  },
);

test('jsonSchemaOf() describes what an author writes: a key with a default may be left out', () => {
  expect(jsonSchemaOf('setup')['required']).toEqual(['format', 'version', 'rig']);
});

test('fieldTables() of the setup explains every key', () => {
  const tables = fieldTables(jsonSchemaOf('setup'));
  const unexplained = tables.flatMap(({ at, fields }) =>
    fields.filter(({ meaning }) => meaning === '').map(({ name }) => `${at}.${name}`),
  );
  expect(tables.map(({ at }) => at)).toContain('rig.desk.stripTypes[].taps');
  expect(unexplained).toEqual([]);
});

test('fieldTables() gives ranges, options and defaults in words', () => {
  const tables = fieldTables({
    properties: {
      level: { type: 'number', minimum: -120, maximum: 0, description: 'Level.' },
      law: { enum: ['one', 'two'], default: 'one' },
      legs: { anyOf: [{ const: 1 }, { const: 2 }], default: 1 },
      list: {
        type: 'array',
        minItems: 1,
        maxItems: 8,
        items: { properties: { id: { type: 'string', pattern: 'x' } } },
      },
    },
    required: ['level', 'list'],
  });
  expect(tables).toEqual([
    {
      at: '',
      fields: [
        { name: 'level', takes: 'a number, −120 to 0', otherwise: 'required', meaning: 'Level.' },
        { name: 'law', takes: 'one, two', otherwise: 'one', meaning: '' },
        { name: 'legs', takes: '1 or 2', otherwise: '1', meaning: '' },
        {
          name: 'list',
          takes: 'a list, at least 1, at most 8',
          otherwise: 'required',
          meaning: '',
        },
      ],
    },
    {
      at: 'list[]',
      fields: [{ name: 'id', takes: 'an id', otherwise: 'may be left out', meaning: '' }],
    },
  ]);
});

test('the example of the page holds what the page says about it', () => {
  const { levels, refusal } = setupExample();
  expect(levels).toMatchObject([{ source: 'Cello' }, { source: 'Alto', at: ['−∞', '−9.0'] }]);
  expect(refusal).toMatch(/^example-setup\.yaml:\d+ at board.*Nearest: desk\.ch2\.fader/);
});
