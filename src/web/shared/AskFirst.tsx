/** The one question before something is gone for good. Escape is no; what is safe stands first. */
import type { ReactNode } from 'react';
import { Button } from 'react-aria-components';
import { Failed } from './Failed.tsx';
import './asking.css';

export function AskFirst(props: {
  question: string;
  children: ReactNode;
  error: { readonly message: string } | null | undefined;
  keep: string;
  onKeep(): void;
  lose: string;
  onLose(): void;
}) {
  const { onKeep } = props;
  return (
    <fieldset
      className="asking"
      onKeyDown={(e) => {
        if (e.key === 'Escape') onKeep();
      }}
    >
      <legend>{props.question}</legend>
      <p>{props.children}</p>
      <Failed error={props.error} />
      <div className="button-row">
        <Button className="button keep" onPress={onKeep}>
          {props.keep}
        </Button>
        <Button className="quiet-button" onPress={props.onLose}>
          {props.lose}
        </Button>
      </div>
    </fieldset>
  );
}
