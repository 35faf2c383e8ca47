import type { Network, Part } from './network.ts';

/** What changes with frequency in a network, beyond latency. */
const FEATURES: Readonly<Record<string, (parts: readonly Part[]) => boolean>> = {
  'an equaliser': (parts) =>
    parts.some((part) => part.kind === 'filters' && part.filters.some(({ gain }) => gain !== 0)),
  'a high-pass': (parts) =>
    parts.some(
      (part) => part.kind === 'filters' && part.filters.some(({ type }) => type === 'highpass'),
    ),
  'a delay': (parts) =>
    parts.some((part) => part.kind === 'delay' && /\.delay(\.[lr])?$/.test(part.to)),
  'a delay with feedback': (parts) =>
    parts.some((part) => part.kind === 'gain' && /\.feedback/.test(part.to) && part.ratio > 0),
};

export const FILTER_FEATURES = Object.keys(FEATURES);

export const filterFeaturesOf = ({ parts }: Network): string[] =>
  Object.entries(FEATURES).flatMap(([name, isAtWork]) => (isAtWork(parts) ? [name] : []));
