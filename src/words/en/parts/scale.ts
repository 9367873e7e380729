/** What is said beside the scale, of batches, and of the forms in which foods go into them. */
import { batch } from '../batch.ts';
import { foodForms } from '../food-forms.ts';
import { hands } from '../hands.ts';
import { weighing } from '../weighing.ts';

export const scale = { weighing, hands, batch, foodForms };
