/** The parts of the bench, in the order in which they run. */
import type { Options, Report } from './lib/report.ts';

export interface Part {
  readonly title: string;
  load(): Promise<{ run(options: Options): Promise<Report> }>;
}

export const PARTS: Readonly<Record<string, Part>> = {
  formulation: { title: 'Questions about mixes', load: () => import('./formulation.ts') },
  table: { title: 'Reference table and search', load: () => import('./table.ts') },
  processes: { title: 'Server and command line', load: () => import('./processes.ts') },
  'first-load': { title: 'First load by place', load: () => import('./first-load.ts') },
};
