import { Toggle } from '../controls/words';
import { words } from '../words';
import { NO_TOOLS, type Tools } from './tools';

/** The middle of the picture, where the wipe begins. */
const MIDDLE = 0.5;

/** Switches for the tools over the pictures. Wipe and blink exclude each other. */
export function LookCloser(props: {
  tools: Tools;
  onChange: (tools: Tools) => void;
  /** Are there two pictures to look from one to the other? */
  several: boolean;
}) {
  const { tools, onChange, several } = props;
  const said = words.looks;
  return (
    <fieldset className="looks">
      <legend className="unseen">{said.title}</legend>
      <span className="says" aria-hidden="true">
        {said.title}
      </span>
      <Toggle
        on={tools.outline}
        disabled={!several}
        onChange={(outline) => onChange({ ...tools, outline })}
      >
        {said.outline}
      </Toggle>
      <Toggle
        on={tools.wipe !== null}
        disabled={!several}
        onChange={(on) =>
          onChange({ ...tools, wipe: on ? MIDDLE : null, blink: tools.blink && !on })
        }
      >
        {said.wipe}
      </Toggle>
      <Toggle
        on={tools.blink}
        disabled={!several}
        onChange={(blink) =>
          onChange({ ...tools, blink, wipe: blink ? NO_TOOLS.wipe : tools.wipe })
        }
      >
        {said.blink}
      </Toggle>
      <Toggle on={tools.landmarks} onChange={(landmarks) => onChange({ ...tools, landmarks })}>
        {said.landmarks}
      </Toggle>
      <Toggle on={tools.stretch} onChange={(stretch) => onChange({ ...tools, stretch })}>
        {said.stretch}
      </Toggle>
      <Toggle on={tools.clay} onChange={(clay) => onChange({ ...tools, clay })}>
        {said.clay}
      </Toggle>
      {tools.clay && <p className="slip-note">{said.claySays}</p>}
      {tools.landmarks && <p className="slip-note">{said.lengthsSay}</p>}
      {tools.stretch && <p className="slip-note">{said.stretchSays}</p>}
    </fieldset>
  );
}
