/** TODO */
import type { AdviceProps } from './MixAdvice.tsx';

export function TradeOffPanel({ mix }: AdviceProps) {
  return <p>{mix.name}</p>;
}
