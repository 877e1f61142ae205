import { Do } from '../controls/words';
import { present as said } from '../words/present.en';
import type { Command } from './keys';
import type { Offered } from './offered';

/** The acts of the talk with their keys, out of sight until the slide's number is pressed or Tab comes here. */
export function Acts(props: {
  open: boolean;
  offered: readonly Offered[];
  give: (command: Command) => void;
}) {
  return (
    // biome-ignore lint/a11y/useSemanticElements: a group of buttons, not of fields
    <div
      className={props.open ? 'present-acts open' : 'present-acts'}
      role="group"
      aria-label={said.actsTitle}
    >
      {props.offered.map(({ words: [what, key], command }) => (
        <Do key={what} onPress={() => props.give(command)}>
          {what} <kbd>{key}</kbd>
        </Do>
      ))}
      <p className="slip-note">{said.keysNote}</p>
    </div>
  );
}
