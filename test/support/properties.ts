import fc from 'fast-check';

/**
 * Property tests try the same inputs on every machine, so that a change is judged by what it
 * changes. `SEED=random npm test` looks elsewhere; a failure names its seed.
 */
const given = process.env['SEED'];
if (given !== 'random') fc.configureGlobal({ seed: Number(given ?? 1) });
