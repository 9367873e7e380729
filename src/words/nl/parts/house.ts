/** What is said of the household as a whole, and of its files. */
import type { PartOf } from '../../part-shapes.ts';
import { access } from '../access.ts';
import { exchange } from '../exchange.ts';
import { household } from '../household.ts';
import { keeping } from '../keeping.ts';
import { ownTable } from '../own-table.ts';

export const house: PartOf<'house'> = { keeping, exchange, access, ownTable, household };
