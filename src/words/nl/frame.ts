import type { Frame } from '../en/frame.ts';
import type { Figures } from '../figures.ts';

export const frame = (_f: Figures): Frame => ({});
