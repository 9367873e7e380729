/** The foods and the mix of a table as a household file, by which they are brought in. */
import { FORMAT_VERSION, HOUSEHOLD_FORMAT } from '../format.ts';
import type { TableProposal } from './table-proposal.ts';

export function tableFile({ foods, mix }: TableProposal): string {
  const records = [
    ...foods.map((body) => ({ kind: 'foods', id: body.id, body })),
    ...(mix ? [{ kind: 'mixes', id: mix.id, body: mix }] : []),
  ];
  return JSON.stringify({ format: HOUSEHOLD_FORMAT, version: FORMAT_VERSION, records });
}
