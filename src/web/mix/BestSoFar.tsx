/** The search for the best mix, where it takes long or was stopped: what is found, and how much better it may get. */
import type { Objective } from '../../formulation/problem/problem.ts';
import { words } from '../../words/words.ts';
import { SoFar } from '../shared/long/SoFar.tsx';
import { bestWords } from '../shared/long/so-far-words.ts';
import type { FormulationView } from './useFormulation.ts';

export function BestSoFar({ view, objective }: { view: FormulationView; objective: Objective }) {
  const t = words().long.stopped;
  const { soFar, stopped, best, collision } = view;
  const found = soFar?.found;
  const mix = stopped ? best : found?.status === 'optimal' ? found : undefined;
  return (
    <SoFar
      soFar={soFar}
      found={mix && bestWords(objective, mix)}
      stoppedAt={best ? t.found : collision ? t.notSure : t.nothing}
      stopped={stopped}
      stop={view.stop}
      goOn={view.goOn}
    />
  );
}
