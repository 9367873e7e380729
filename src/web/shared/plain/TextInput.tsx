/** The platform's own field for a line of text, with its label; for what must stand soon on a phone. */
import { type KeyboardEvent, type ReactNode, type Ref, useId } from 'react';

interface Props {
  label: string;
  value: string;
  onChange(value: string): void;
  maxLength?: number;
  inputMode?: 'decimal';
  /** What is wrong with it; empty where nothing is. */
  fault?: string;
  /** Ids of what tells more of it. */
  about?: string;
  input?: Ref<HTMLInputElement>;
  onKeyDown?(event: KeyboardEvent): void;
  className?: string;
  /** Lays the field out, where something stands beside it. */
  around?(field: ReactNode): ReactNode;
  /** Lays out what is wrong. */
  below?(fault: ReactNode): ReactNode;
}

const asItIs = (part: ReactNode) => part;

export function TextInput({ label, value, onChange, fault = '', about = '', ...more }: Props) {
  const { maxLength, inputMode, input, onKeyDown, className = '', around = asItIs, below = asItIs } = more;
  const id = useId();
  const isWrong = fault !== '';
  return (
    <div className={`text-input ${className}`} data-invalid={isWrong || undefined}>
      <label htmlFor={id}>{label}</label>
      {around(
        <input
          id={id}
          ref={input}
          type="text"
          autoComplete="off"
          inputMode={inputMode}
          maxLength={maxLength}
          value={value}
          aria-invalid={isWrong || undefined}
          aria-describedby={[about, isWrong && `${id}-fault`].filter(Boolean).join(' ') || undefined}
          onChange={(event) => onChange(event.currentTarget.value)}
          onKeyDown={onKeyDown}
        />,
      )}
      {below(
        isWrong && (
          <span id={`${id}-fault`} className="field-error">
            {fault}
          </span>
        ),
      )}
    </div>
  );
}
