/** What every kind of advice is given of the mix at hand. */
import type { Mix } from '../../../household/model.ts';
import type { FormulationView } from '../useFormulation.ts';

export interface AdviceProps {
  /** The mix with what its animals bring. */
  readonly mix: Mix;
  readonly view: FormulationView;
  nameOf(id: string): string;
}
