import { batch } from '../batch.ts';
import { foodForms } from '../food-forms.ts';
import { hands } from '../hands.ts';
import { weighing } from '../weighing.ts';

export const scale = { weighing, hands, batch, foodForms };
