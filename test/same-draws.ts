/**
 * Before each file of tests: the random draws of `npm test` are the same each time, so that it fails by what was changed
 * and not by luck; the long run draws anew.
 */
import fc from 'fast-check';
import { LONG } from './draws.ts';

if (!LONG) fc.configureGlobal({ ...fc.readConfigureGlobal(), seed: 1 });
