import { createRoot, extend, type ReconcilerRoot } from '@react-three/fiber';
import { useEffect, useLayoutEffect, useRef, useState } from 'react';
import { Group, Mesh, NeutralToneMapping, SpotLight, WebGLRenderer } from 'three';
import type { RoomRun } from '../session/kit';
import type { Letter } from '../session/types';
import type { LandmarkName, Sitter } from '../sitter/types';
import type { Look } from './looks';
import { EXPOSURE } from './outputPass';
import { type BufferLimits, bufferScale } from './rects';
import { type StageHandle, StageScene, type StageSceneProps } from './StageScene';
import type { StudioLight } from './studio';
import type { StagePicture } from './wall';

/** Why there are no pictures: no graphics context was given, or it was taken away and not returned. */
export type Unavailable = 'no-webgl' | 'context-lost';

export interface StageProps {
  readonly pictures: readonly StagePicture[];
  /** Who is in the pictures that name nobody. */
  readonly sitter: Sitter;
  readonly light: StudioLight;
  readonly room: RoomRun;
  readonly look?: Look;
  /** Landmarks shown by the look 'landmarks'. Keep the array's identity while it does not change. */
  readonly landmarks?: readonly LandmarkName[];
  readonly onReady?: (handle: StageHandle) => void;
  /** Letters drawn in a frame; not called when a frame drew nothing. */
  readonly onDrawn?: (letters: readonly Letter[]) => void;
  /** 'context-lost' is taken back by `onReady`, called again once the context is restored. */
  readonly onUnavailable?: (reason: Unavailable) => void;
}

extend({ Group, Mesh, SpotLight });

const NO_LANDMARKS: readonly LandmarkName[] = [];
/** Four samples each of colour and depth: 12 megapixels take about 400 MB. */
const LARGEST_AREA = 12e6;
const nothing = (): void => undefined;

interface Size {
  readonly width: number;
  readonly height: number;
}

function makeRenderer(canvas: HTMLCanvasElement): WebGLRenderer {
  const renderer = new WebGLRenderer({
    canvas,
    alpha: true,
    antialias: true,
    preserveDrawingBuffer: true,
    powerPreference: 'high-performance',
  });
  renderer.autoClear = false;
  renderer.shadowMap.autoUpdate = false;
  return renderer;
}

/** Asked for while the context is live: a lost one answers nothing. */
function limitsOf(renderer: WebGLRenderer): BufferLimits {
  const gl = renderer.getContext();
  const viewport = gl.getParameter(gl.MAX_VIEWPORT_DIMS) as Int32Array;
  const side = Math.min(
    gl.getParameter(gl.MAX_RENDERBUFFER_SIZE) as number,
    ...Array.from(viewport),
  );
  return { side, area: LARGEST_AREA };
}

interface Mounted {
  readonly root: ReconcilerRoot<HTMLCanvasElement>;
  readonly renderer: WebGLRenderer;
  readonly limits: BufferLimits;
}

/**
 * All pictures on one canvas that covers the positioned element around it. The canvas takes no pointer
 * and is transparent where there is no picture. A frame is drawn only after something changed, and then
 * only the pictures that changed.
 */
export function Stage(props: StageProps) {
  const host = useRef<HTMLDivElement>(null);
  const latest = useRef(props);
  latest.current = props;
  const [mounted, setMounted] = useState<Mounted | null>(null);
  const [size, setSize] = useState<Size | null>(null);
  const [generation, setGeneration] = useState(0);
  const handle = useRef<StageHandle | null>(null);

  useEffect(() => {
    const element = host.current;
    if (!element) return;
    // A canvas of its own for each mounting: a context that is being given up cannot be used again.
    const canvas = element.ownerDocument.createElement('canvas');
    canvas.setAttribute('aria-hidden', 'true');
    Object.assign(canvas.style, { position: 'absolute', inset: '0', display: 'block' });
    element.append(canvas);
    const root = createRoot(canvas);
    let given: WebGLRenderer | null = null;
    let open = true;
    root
      .configure({
        gl: () => {
          given = makeRenderer(canvas);
          return given;
        },
        frameloop: 'demand',
        shadows: 'percentage',
        flat: true,
        dpr: 1,
        size: { width: 1, height: 1, top: 0, left: 0 },
      })
      .then(
        () => {
          if (!open || !given) return;
          given.toneMapping = NeutralToneMapping;
          given.toneMappingExposure = EXPOSURE;
          setMounted({ root, renderer: given, limits: limitsOf(given) });
        },
        () => open && latest.current.onUnavailable?.('no-webgl'),
      );
    const lost = (event: Event) => {
      event.preventDefault();
      if (open) latest.current.onUnavailable?.('context-lost');
    };
    const restored = () => {
      if (!open) return;
      setGeneration((count) => count + 1);
      if (handle.current) latest.current.onReady?.(handle.current);
    };
    canvas.addEventListener('webglcontextlost', lost);
    canvas.addEventListener('webglcontextrestored', restored);
    return () => {
      open = false;
      handle.current = null;
      setMounted(null);
      root.unmount();
      canvas.remove();
    };
  }, []);

  useLayoutEffect(() => {
    const element = host.current;
    if (!element) return;
    const measure = () => {
      const { clientWidth: width, clientHeight: height } = element;
      setSize((old) => (old?.width === width && old.height === height ? old : { width, height }));
    };
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    measure();
    return () => observer.disconnect();
  }, []);

  const [onReady] = useState(() => (ready: StageHandle) => {
    handle.current = ready;
    latest.current.onReady?.(ready);
  });
  const [onDrawn] = useState(
    () => (letters: readonly Letter[]) => (latest.current.onDrawn ?? nothing)(letters),
  );

  const { pictures, sitter, look = 'photo', landmarks = NO_LANDMARKS } = props;
  const light = useEqual(props.light);
  const room = useEqual(props.room);
  useLayoutEffect(() => {
    if (!mounted || !size || size.width < 1 || size.height < 1) return;
    const scene: Omit<StageSceneProps, 'scale'> = {
      pictures,
      sitter,
      light,
      room,
      look,
      landmarks,
      generation,
      onReady,
      onDrawn,
    };
    const scale = sizeBuffer(mounted, size);
    mounted.root.render(<StageScene {...scene} scale={scale} />);
  }, [mounted, size, pictures, sitter, light, room, look, landmarks, generation, onReady, onDrawn]);

  return <div ref={host} style={{ position: 'absolute', inset: 0, pointerEvents: 'none' }} />;
}

/** The first object of equal ones: an edit elsewhere may make a new, equal light or room. */
function useEqual<T extends object>(value: T): T {
  const kept = useRef(value);
  if (JSON.stringify(kept.current) !== JSON.stringify(value)) kept.current = value;
  return kept.current;
}

/** Sizes the buffer for the element; returns the buffer pixels per CSS pixel that were really given. */
function sizeBuffer({ root, renderer, limits }: Mounted, size: Size): number {
  const ask = (scale: number): number => {
    void root.configure({
      frameloop: 'demand',
      shadows: 'percentage',
      flat: true,
      dpr: scale,
      size: { ...size, top: 0, left: 0 },
    });
    const gl = renderer.getContext();
    const given = Math.min(
      gl.drawingBufferWidth / renderer.domElement.width,
      gl.drawingBufferHeight / renderer.domElement.height,
    );
    return given > 0 ? given : 1;
  };
  const wanted = bufferScale(size.width, size.height, window.devicePixelRatio, limits);
  const given = ask(wanted);
  if (given >= 1) return wanted;
  ask(wanted * given);
  return wanted * given;
}
