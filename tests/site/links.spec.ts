import { expect, test } from '@playwright/test';
import { builtFiles, builtPages, builtText } from './built-pages.ts';

const attributes = (text: string, name: string): string[] =>
  [...text.matchAll(new RegExp(`\\s${name}="([^"]*)"`, 'g'))].map(([, value = '']) => value);

/** A fragment that says in what state a page opens, as `#drill=…`, is no place on it. */
const isState = (hash: string) => hash.includes('=');

test('every link within the site leads to a page or a file that is built, and to a place that is on it', () => {
  const texts = new Map(builtPages().map((address) => [address, builtText(address)]));
  const files = new Set(builtFiles('json'));
  const places = new Map(
    [...texts].map(([address, text]) => [address, new Set(attributes(text, 'id'))]),
  );
  const home = 'http://home.invalid';
  const dead = [...texts].flatMap(([address, text]) => {
    const links = [...text.matchAll(/<a\s[^>]*>/g)].flatMap(([tag]) => attributes(tag, 'href'));
    const within = links
      .map((href) => new URL(href, `${home}${address}`))
      .filter(({ origin }) => origin === home);
    expect(within.length, `${address} has links`).toBeGreaterThan(0);
    return within
      .filter(({ pathname, hash }) => {
        if (files.has(pathname)) return false;
        const on = places.get(pathname);
        return !on || (hash !== '' && !isState(hash) && !on.has(decodeURIComponent(hash.slice(1))));
      })
      .map(({ pathname, hash }) => `${address} → ${pathname}${hash}`);
  });
  expect([...new Set(dead)]).toEqual([]);
});
