import { advice } from '../advice.ts';
import { foods } from '../foods.ts';
import { label } from '../label.ts';
import { search } from '../search.ts';

export const answers = { advice, foods, label, search };
