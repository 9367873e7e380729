/** The field of a name inside a TextField: it takes as many letters as are kept, and says so before it is full. */
import { Input, InputContext, type InputProps, useSlottedContext } from 'react-aria-components';
import { MOST_NAME } from '../../../formulation/problem/letters.ts';
import { words } from '../../../words/words.ts';
import './name-input.css';

/** From how many letters left on it is said. */
const FEW = 20;

interface Props extends InputProps {
  /** Letters at most. */
  most?: number;
  ref?: React.Ref<HTMLInputElement>;
}

export function NameInput({ most = MOST_NAME, ...props }: Props) {
  const field = useSlottedContext(InputContext);
  const left = most - String(field?.value ?? '').length;
  return (
    <>
      <Input {...props} maxLength={most} />
      <small className="letters-left" role="status">
        {left <= FEW && words().store.lettersLeft(Math.max(0, left), most)}
      </small>
    </>
  );
}
