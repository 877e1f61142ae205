import type { ReactNode } from 'react';
import { Button, type ButtonProps, ToggleButton } from 'react-aria-components';

/** A word that acts. */
export function Do({ main, ...props }: ButtonProps & { main?: boolean }) {
  return <Button {...props} className={main ? 'do main' : 'do'} />;
}

/** A word that is on or off. */
export function Toggle(props: {
  /** Where the word alone does not say what is switched. */
  label?: string;
  on: boolean;
  onChange: (on: boolean) => void;
  children: ReactNode;
  disabled?: boolean;
}) {
  return (
    <ToggleButton
      className="toggle"
      isSelected={props.on}
      onChange={props.onChange}
      isDisabled={props.disabled ?? false}
      {...(props.label !== undefined && { 'aria-label': props.label })}
    >
      {props.children}
    </ToggleButton>
  );
}
