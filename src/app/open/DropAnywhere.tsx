import './drop.css';
import { useEffect, useRef, useState } from 'react';
import type { Started } from '../state/start';
import { useWorkbench } from '../state/workbench';
import { stills as said } from '../words/stills.en';
import { openFile } from './openFile';

const carriesFiles = ({ dataTransfer }: DragEvent): boolean =>
  dataTransfer?.types.includes('Files') ?? false;

/** Opens a file dropped anywhere on the page, with a hint while one is held above it. */
export default function DropAnywhere(props: {
  open: Started['open'];
  onNotice: (sentence: string) => void;
}) {
  const { models, act } = useWorkbench();
  const [isOver, setIsOver] = useState(false);
  const [told, setTold] = useState('');
  const opening = useRef({ ...props, models, act });
  opening.current = { ...props, models, act };
  useEffect(() => {
    const over = (event: DragEvent) => {
      // A part of the page that takes files itself has spoken first.
      if (event.defaultPrevented || !carriesFiles(event)) return;
      event.preventDefault();
      setIsOver(true);
    };
    const leave = (event: DragEvent) => {
      if (event.relatedTarget === null) setIsOver(false);
    };
    const drop = (event: DragEvent) => {
      setIsOver(false);
      if (event.defaultPrevented || !carriesFiles(event)) return;
      event.preventDefault();
      const file = event.dataTransfer?.files[0];
      if (file) openFile(file, opening.current).then((label) => setTold(label ?? ''));
    };
    window.addEventListener('dragover', over);
    window.addEventListener('dragleave', leave);
    window.addEventListener('drop', drop);
    return () => {
      window.removeEventListener('dragover', over);
      window.removeEventListener('dragleave', leave);
      window.removeEventListener('drop', drop);
    };
  }, []);
  return (
    <>
      <span role="status" className="unseen">
        {told}
      </span>
      {isOver && (
        <div className="drop-hint">
          <p>{said.drop}</p>
        </div>
      )}
    </>
  );
}
