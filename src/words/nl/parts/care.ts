import { animals } from '../animals.ts';
import { bodyWeight } from '../body-weight.ts';
import { dailyFood } from '../daily-food.ts';
import { leftovers } from '../leftovers.ts';
import { lifeline } from '../lifeline.ts';
import { sitter } from '../sitter.ts';
import { trials } from '../trials.ts';
import { vetPage } from '../vet-page.ts';

export const care = { animals, sitter, vetPage, lifeline, trials, leftovers, dailyFood, bodyWeight };
