/** TODO */
import type { AdviceProps } from './MixAdvice.tsx';

export function WhyPanel({ mix }: AdviceProps) {
  return <p>{mix.name}</p>;
}
