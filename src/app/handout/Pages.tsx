import './page.css';
import { useEffect, useRef } from 'react';
import type { Darkroom } from '../darkroom/useDarkroom';
import { useWorkbench } from '../state/workbench';
import { handout as said } from '../words/handout.en';
import { Page } from './Page';
import { usePaperZoom } from './usePaperZoom';

/** All pages one below the other, each at the size it prints at or as large as the window lets it be. */
export function Pages(props: { darkroom: Darkroom; chosen: string | null }) {
  const { session } = useWorkbench();
  const { pages, paper, orientation } = session.handout;
  const list = useRef<HTMLElement>(null);
  const zoom = usePaperZoom(list, paper, orientation);
  const { chosen } = props;
  useEffect(() => {
    const page = chosen && list.current?.querySelector(`[data-page="${CSS.escape(chosen)}"]`);
    if (page) page.scrollIntoView({ block: 'start' });
  }, [chosen]);
  return (
    <section
      ref={list}
      className="pages"
      aria-label={said.pages}
      style={{ '--zoom': zoom } as React.CSSProperties}
    >
      <style>{`@page { size: ${said.papers[paper]} ${orientation}; margin: 0; }`}</style>
      {pages.map((page, i) => (
        <Page
          key={page.id}
          darkroom={props.darkroom}
          page={page}
          number={i + 1}
          count={pages.length}
        />
      ))}
    </section>
  );
}
