/** As much of JSON Schema as the formats here use. */
interface Schema {
  readonly type?: string;
  readonly description?: string;
  readonly default?: unknown;
  readonly const?: unknown;
  readonly enum?: readonly unknown[];
  readonly anyOf?: readonly Schema[];
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly required?: readonly string[];
  readonly additionalProperties?: unknown;
  readonly items?: Schema;
  readonly pattern?: string;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly maxLength?: number;
  readonly minItems?: number;
  readonly maxItems?: number;
}

/** One key of a map in a file. */
export interface Field {
  readonly name: string;
  /** What may stand there, in words. */
  readonly takes: string;
  /** What holds where it is left out: a default in words, `required`, or `may be left out`. */
  readonly otherwise: string;
  readonly meaning: string;
}

/** The keys of one map in a file. */
export interface FieldTable {
  /** Where the map stands: empty for the file itself, `rig.box.tracks[]` for an entry of a list. */
  readonly at: string;
  readonly fields: readonly Field[];
}

/** A table for every map that a JSON Schema describes, the outer ones first. */
export function fieldTables(schema: unknown): FieldTable[] {
  return tablesIn(schema as Schema, '');
}

function tablesIn(schema: Schema, at: string): FieldTable[] {
  const { properties, required = [], items } = schema;
  if (items) return tablesIn(items, `${at}[]`);
  if (!properties) return [];
  const entries = Object.entries(properties);
  const fields = entries.map(
    ([name, field]): Field => ({
      name,
      takes: takesText(field),
      otherwise: otherwiseText(field, required.includes(name)),
      meaning: field.description ?? '',
    }),
  );
  const inner = entries.flatMap(([name, field]) =>
    tablesIn(field, at === '' ? name : `${at}.${name}`),
  );
  return [{ at, fields }, ...inner];
}

function takesText(schema: Schema): string {
  if (schema.const !== undefined) return String(schema.const);
  if (schema.enum) return schema.enum.join(', ');
  if (schema.anyOf) return schema.anyOf.map(takesText).join(' or ');
  switch (schema.type) {
    case 'array':
      return listText(schema);
    case 'object':
      return schema.properties ? 'a map' : 'a value for each address';
    case 'string':
      return schema.pattern ? 'an id' : withMost('text', schema.maxLength, 'characters');
    case 'number':
      return `a number${rangeText(schema)}`;
    case 'integer':
      return `a whole number${rangeText(schema)}`;
    case 'boolean':
      return 'true or false';
    default:
      return 'anything';
  }
}

function listText({ items, minItems = 0, maxItems }: Schema): string {
  const of = items?.enum ? ` of ${items.enum.join(', ')}` : '';
  const least = minItems > 0 ? `at least ${minItems}` : '';
  const most = maxItems === undefined ? '' : `at most ${maxItems}`;
  return [`a list${of}`, least, most].filter(Boolean).join(', ');
}

const withMost = (what: string, most: number | undefined, unit: string): string =>
  most === undefined ? what : `${what}, at most ${most} ${unit}`;

function rangeText({ minimum, maximum }: Schema): string {
  if (minimum === undefined || maximum === undefined) return '';
  return `, ${figure(minimum)} to ${figure(maximum)}`;
}

const figure = (value: number): string => String(value).replace('-', '−');

function otherwiseText(field: Schema, isRequired: boolean): string {
  if (field.default === undefined) return isRequired ? 'required' : 'may be left out';
  const { default: value } = field;
  if (typeof value === 'object') return Array.isArray(value) ? 'an empty list' : 'an empty map';
  return String(value);
}
