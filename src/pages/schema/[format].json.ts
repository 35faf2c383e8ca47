import type { APIRoute, GetStaticPaths } from 'astro';
import { FORMAT_NAMES, type Format, jsonSchemaOf } from '../../formats/formats.ts';

/** The JSON Schema of each file format: `/schema/setup.json`. */
export const getStaticPaths = (() =>
  FORMAT_NAMES.map((format) => ({ params: { format } }))) satisfies GetStaticPaths;

export const GET: APIRoute = ({ params }) =>
  new Response(`${JSON.stringify(jsonSchemaOf(params['format'] as Format), null, 2)}\n`, {
    headers: { 'content-type': 'application/schema+json' },
  });
