/** TODO */
import type { Eater } from '../../formulation/for-animals.ts';
import type { Mix } from '../../household/model.ts';
import type { AdviceProps } from './MixAdvice.tsx';

export function SharingPanel({
  mix,
}: AdviceProps & { readonly kept: Mix; readonly eaters: readonly Eater[] }) {
  return <p>{mix.name}</p>;
}
