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
  drag: { title: 'A dragged slider', load: () => import('./drag.ts') },
  'ten-years': { title: 'Ten years of keeping: screens', load: () => import('./ten-years.ts') },
  server: { title: 'Ten years of keeping: server and store', load: () => import('./server.ts') },
  'weigh-out': { title: 'Corrections while weighing out', load: () => import('./weigh-out.ts') },
};
