import { cautions } from '../cautions.ts';

export const warnings = { cautions };
