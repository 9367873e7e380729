/** TODO */
import type { AdviceProps } from './MixAdvice.tsx';

export function RefusalPanel({ mix }: AdviceProps) {
  return <p>{mix.name}</p>;
}
