/** In a process of its own: how long the reference table takes to be read. Prints ms. */
import { loadReference } from '../../src/household/reference-file.ts';

const start = performance.now();
loadReference();
console.log(performance.now() - start);
