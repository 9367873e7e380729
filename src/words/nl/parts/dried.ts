import { drying } from '../drying.ts';
import { foodForms } from '../food-forms.ts';

export const dried = { drying, foodForms };
