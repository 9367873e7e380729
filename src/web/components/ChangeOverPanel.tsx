/** TODO */
import type { AdviceProps } from './MixAdvice.tsx';

export function ChangeOverPanel({ mix }: AdviceProps) {
  return <p>{mix.name}</p>;
}
