/** TODO */
import type { AdviceProps } from './MixAdvice.tsx';

export function WishPanel({ mix }: AdviceProps) {
  return <p>{mix.name}</p>;
}
