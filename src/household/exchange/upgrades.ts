/** Files of older versions of the format, brought to the newest, one version after the other. */
import { FORMAT_VERSION } from './format.ts';

/** From version i + 1 to i + 2, by place. A file is changed only where its shape was; what records hold is checked after. */
const STEPS: readonly ((file: Record<string, unknown>) => Record<string, unknown>)[] = [];

/** @param version of the file, from 1 to the newest */
export function upgraded(file: Record<string, unknown>, version: number): Record<string, unknown> {
  return STEPS.slice(version - 1, FORMAT_VERSION - 1).reduce((f, step) => step(f), file);
}
