/** Starts the files that take longest first, so that no worker is idle while the last one runs. */
import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** The files of more than some ten seconds, longest first. */
const LONGEST = [
  'test/browser/month',
  'test/browser/trials',
  'test/browser/leftovers',
  'test/browser/pellet',
  'test/browser/wishes',
  'test/browser/refusals',
  'test/browser/weigh-out-browser-killed',
  'test/browser/mix',
  'test/browser/feeding',
  'test/browser/about-animal',
  'test/browser/now',
  'test/browser/weight',
  'test/browser/shopping',
  'test/kitchen/weigh-out',
  'test/browser/calendar',
  'test/browser/weigh-out',
  'test/browser/versions',
  'test/browser/label',
  'test/browser/weigh-out-killed',
  'test/browser/mix-to-bowl',
  'test/care/weight-simulation',
  'test/formulation/command',
  'test/formulation/counting',
];

/** Place in the list; files that are not in it come after those that are. */
function placeOf(file: TestSpecification): number {
  const at = LONGEST.findIndex((name) => file.moduleId.endsWith(`/${name}.test.ts`));
  return at < 0 ? LONGEST.length : at;
}

export class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    // What the last run took, where it is known, orders the rest.
    const sorted = await super.sort(files);
    return sorted.toSorted((a, b) => placeOf(a) - placeOf(b));
  }
}
