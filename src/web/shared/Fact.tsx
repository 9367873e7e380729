/** One fact of a list: its name, and what it is. */
import './Fact.css';
export function Fact({ name, words }: { name: string; words: string }) {
  return (
    <div>
      <dt>{name}</dt>
      <dd>{words}</dd>
    </div>
  );
}
