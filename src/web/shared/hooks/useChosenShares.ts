/** The shares of what is fed beside a mix, where they are left open; worked out by the worker. */
import { useQuery } from '@tanstack/react-query';
import { useMemo } from 'react';
import type { Problem } from '../../../formulation/problem/problem.ts';
import { leavesShareOpen } from '../../../formulation/solve/ration-share.ts';
import type { ChosenShares } from '../../../kitchen/feeding/chosen-shares.ts';
import { engine } from '../../worker/engine.ts';

interface ChosenFor {
  /** Undefined where a problem leaves no share open, and where nothing could be worked out. */
  chosenFor(problem: Problem): ChosenShares | undefined;
  /** Whether an answer is still on its way. */
  readonly working: boolean;
}

export function useChosenShares(problems: readonly Problem[]): ChosenFor {
  const open = problems.filter(leavesShareOpen).map((p) => JSON.stringify(p));
  const asked = open.length > 0;
  const { data, isPending } = useQuery({
    queryKey: ['chosen shares', open],
    queryFn: async () => {
      const answers = await Promise.all(open.map((p) => engine.chosenShares(JSON.parse(p))));
      return new Map(answers.flatMap((a, i) => (a.ok ? [[open[i], a.value] as const] : [])));
    },
    enabled: asked,
    staleTime: Number.POSITIVE_INFINITY,
  });
  return useMemo(
    () => ({
      chosenFor: (problem) => (leavesShareOpen(problem) ? data?.get(JSON.stringify(problem)) : undefined),
      working: asked && isPending,
    }),
    [data, asked, isPending],
  );
}
