/** Our side: the stage as the app mounts it. A frame is drawn at once instead of at the next refresh. */
import { advance, flushSync as flushStage } from '@react-three/fiber';
import { useEffect, useState } from 'react';
import { flushSync } from 'react-dom';
import { createRoot } from 'react-dom/client';
import { runOf } from '../../../src/session/kit';
import { Stage, type StageHandle, type StagePicture } from '../../../src/stage';
import { finish } from './pixels';
import { CANVAS, type Subject } from './subject';

export interface StageSide {
  readonly canvas: HTMLCanvasElement;
  readonly handle: StageHandle;
  /** From new cameras in the page's state to finished pixels. */
  readonly draw: (pictures: readonly StagePicture[]) => void;
}

interface PageProps {
  readonly subject: Subject;
  readonly onReady: (handle: StageHandle) => void;
  /** Told how to change the pictures. */
  readonly onHang: (hang: (pictures: readonly StagePicture[]) => void) => void;
}

function Page({ subject, onReady, onHang }: PageProps) {
  const [pictures, setPictures] = useState(subject.states[0]);
  useEffect(() => onHang(setPictures), [onHang]);
  const { light } = subject.session;
  const room = runOf(subject.session.room);
  return (
    <Stage
      pictures={pictures}
      sitter={subject.sitter}
      light={light}
      room={room}
      onReady={onReady}
    />
  );
}

export async function mountStage(host: HTMLElement, subject: Subject): Promise<StageSide> {
  Object.assign(host.style, { width: `${CANVAS.width}px`, height: `${CANVAS.height}px` });
  let hang: (pictures: readonly StagePicture[]) => void = () => undefined;
  const onHang: PageProps['onHang'] = (change) => {
    hang = change;
  };
  const handle = await new Promise<StageHandle>((resolve) => {
    createRoot(host).render(<Page subject={subject} onReady={resolve} onHang={onHang} />);
  });
  const canvas = host.querySelector('canvas');
  const gl = canvas?.getContext('webgl2');
  if (!canvas || !gl) throw new Error('the stage has no canvas');
  const draw = (pictures: readonly StagePicture[]) => {
    const before = handle.counts().renders;
    flushStage(() => flushSync(() => hang(pictures)));
    advance(performance.now());
    finish(gl);
    const drawn = handle.counts().renders - before;
    if (drawn !== pictures.length) throw new Error(`${drawn} pictures were drawn`);
  };
  draw(subject.states[1]);
  return { canvas, handle, draw };
}
