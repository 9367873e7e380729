import { access } from '../access.ts';
import { exchange } from '../exchange.ts';
import { household } from '../household.ts';
import { keeping } from '../keeping.ts';
import { ownTable } from '../own-table.ts';

export const house = { keeping, exchange, access, ownTable, household };
