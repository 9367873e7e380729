/** What is said of foods and of labels where a mix is worked out, and what may be done about it. */
import { advice } from '../advice.ts';
import { foods } from '../foods.ts';
import { label } from '../label.ts';
import { search } from '../search.ts';

export const answers = { advice, foods, label, search };
