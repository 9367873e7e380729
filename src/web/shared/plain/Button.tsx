/**
 * The platform's own button, for Now, the frame and the scale: React Aria's, which most screens use, is 12 kB by itself. It
 * looks the same (`app/buttons.css`) and is asked in the same words.
 */
import type { ComponentProps } from 'react';

interface Props extends Omit<ComponentProps<'button'>, 'onClick' | 'disabled'> {
  onPress?(): void;
  isDisabled?: boolean;
}

export function Button({ onPress, isDisabled, ...rest }: Props) {
  return <button type="button" {...rest} disabled={isDisabled} onClick={onPress && (() => onPress())} />;
}
