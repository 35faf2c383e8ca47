/**
 * Astro's own command line with its telemetry off: nothing leaves the machine by itself.
 *
 * It must be off before Astro starts, and a variable before a command is not written the same in
 * every shell; hence this file between `package.json` and Astro.
 */
process.env['ASTRO_TELEMETRY_DISABLED'] = '1';
await import(new URL('../../node_modules/astro/bin/astro.mjs', import.meta.url).href);
