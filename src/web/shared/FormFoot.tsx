/** The end of a form: why it was not kept, and the buttons to keep it or to leave it. */

import { Button } from 'react-aria-components';
import { words } from '../../words/words.ts';
import { Failed } from './Failed.tsx';

export function FormFoot(props: {
  error: { readonly message: string } | null | undefined;
  save: string;
  leave?: string;
  onLeave(): void;
}) {
  return (
    <>
      <Failed error={props.error} />
      <div className="button-row">
        <Button type="submit" className="button strong">
          {props.save}
        </Button>
        <Button className="quiet-button" onPress={props.onLeave}>
          {props.leave ?? words().common.cancel}
        </Button>
      </div>
    </>
  );
}
