import { type ReactNode, Suspense, useId, useState } from 'react';
import { Do } from './words';

/** Parts of a page that open one at a time: their names side by side, the open one's content below. */
export function Openings(props: {
  parts: readonly { readonly name: string; readonly content: ReactNode }[];
}) {
  const [open, setOpen] = useState<string | null>(null);
  const id = useId();
  const shown = props.parts.find(({ name }) => name === open);
  return (
    <div className="openings">
      <div className="row">
        {props.parts.map(({ name }) => (
          <Do
            key={name}
            aria-expanded={name === open}
            {...(name === open ? { 'aria-controls': id } : {})}
            onPress={() => setOpen(name === open ? null : name)}
          >
            {name}
          </Do>
        ))}
      </div>
      {shown && (
        <section id={id} aria-label={shown.name}>
          <Suspense fallback={null}>{shown.content}</Suspense>
        </section>
      )}
    </div>
  );
}
