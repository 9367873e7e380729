import { beforeEach } from 'vitest';

/**
 * For a file or block whose tests go on from where the one before stopped, as a keeper does: once one has failed, the
 * rest is skipped and says so, so that one failure stays one and nothing waits in vain for a page that never came.
 */
export function story(): void {
  let failed: string | undefined;
  beforeEach((context) => {
    if (failed !== undefined) context.skip(`goes on from "${failed}", which failed`);
    context.onTestFailed(() => {
      failed = context.task.name;
    });
  });
}
