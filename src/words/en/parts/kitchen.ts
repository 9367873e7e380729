/** What is said where things are bought, dried and weighed. */
import { drying } from '../drying.ts';
import { foodForms } from '../food-forms.ts';
import { formulation } from '../formulation.ts';
import { hands } from '../hands.ts';
import { shopping } from '../shopping.ts';
import { weighing } from '../weighing.ts';

export const kitchen = { shopping, drying, weighing, hands, formulation, foodForms };
