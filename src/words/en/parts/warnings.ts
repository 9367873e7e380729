/** What is said of foods that are not fed, or only a little of. */
import { cautions } from '../cautions.ts';

export const warnings = { cautions };
