import { useEffect, useRef } from 'react';
import type { Letter } from '../../session/types';
import { type Command, commandOf } from './keys';

/** Share of the width, from the left, on which a press goes back; on the rest it goes on. */
const BACK = 0.5;

/** Is it something that takes a press itself? */
const isOwn = (target: EventTarget | null): boolean =>
  target instanceof Element && target.closest('button, .present-acts') !== null;

/**
 * The keys of a talk, and presses on its left and right half. Nothing is heard while `deaf`: a sheet has
 * keys of its own.
 */
export function useCommands(
  give: (command: Command) => void,
  { asked, deaf }: { readonly asked: readonly Letter[]; readonly deaf: boolean },
): void {
  const latest = useRef({ give, asked });
  latest.current = { give, asked };
  useEffect(() => {
    if (deaf) return;
    const onKey = (event: KeyboardEvent) => {
      if (event.ctrlKey || event.metaKey || event.altKey) return;
      const command = commandOf(event.key, {
        asked: latest.current.asked,
        onButton: isOwn(event.target),
      });
      if (!command) return;
      event.preventDefault();
      // A key held down turns pages, but counts one answer and plays one move.
      if (event.repeat && command.do !== 'next' && command.do !== 'back') return;
      latest.current.give(command);
    };
    const onPress = (event: MouseEvent) => {
      if (isOwn(event.target)) return;
      latest.current.give({ do: event.clientX < BACK * window.innerWidth ? 'back' : 'next' });
    };
    window.addEventListener('keydown', onKey);
    window.addEventListener('click', onPress);
    return () => {
      window.removeEventListener('keydown', onKey);
      window.removeEventListener('click', onPress);
    };
  }, [deaf]);
}
