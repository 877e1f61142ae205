import { useRef } from 'react';
import { setPageWords } from '../../session/actions/handout-page';
import type { HandoutPage } from '../../session/handout';
import { useWorkbench } from '../state/workbench';
import { page as said } from '../words/page.en';

/**
 * Words of a page, edited where they stand. Left as they are they follow the pictures; emptied, they do so
 * again. Escape puts back what stood there.
 */
export function Editable(props: {
  page: HandoutPage;
  /** Letters and digits; the name under which changed words are kept. */
  place: string;
  /** What stands here by itself. */
  usual: string;
  as: 'h2' | 'p' | 'li' | 'span';
  className?: string;
}) {
  const { act } = useWorkbench();
  const { page, place, usual, as: Tag } = props;
  const text = page.words[place] ?? usual;
  const element = useRef<HTMLElement>(null);
  const keep = () => {
    // biome-ignore lint/performance/useDomNodeTextContent: lines that the browser broke by elements count as lines
    const typed = (element.current?.innerText ?? '').replaceAll('\u00a0', ' ').trim();
    if (typed === text) return;
    const to = typed === '' || typed === usual ? null : typed;
    if (to === null && element.current) element.current.textContent = usual;
    act(setPageWords, { id: page.id, place, to });
  };
  const kind = place.replace(/[0-9]+$/, '');
  return (
    <Tag
      // A key, so that words that follow the pictures are drawn anew after the browser's own editing.
      key={text}
      ref={element as never}
      className={props.className}
      contentEditable="plaintext-only"
      suppressContentEditableWarning
      role="textbox"
      tabIndex={0}
      aria-multiline="true"
      aria-label={said.editable(said.places[kind] ?? kind)}
      onBlur={keep}
      onKeyDown={(event) => {
        if (event.key !== 'Escape' || !element.current) return;
        element.current.textContent = text;
        element.current.blur();
      }}
    >
      {text}
    </Tag>
  );
}
