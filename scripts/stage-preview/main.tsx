/** A page with nothing but the stage, driven by `window.preview`: takes the pictures of contact sheets. */
import { advance, flushSync as flushStage } from '@react-three/fiber';
import { useEffect, useState } from 'react';
import { flushSync } from 'react-dom';
import { createRoot } from 'react-dom/client';
import { cameraAt } from '../../src/optics/camera';
import { focalForFrame } from '../../src/optics/framing';
import type { Camera, Vec3 } from '../../src/optics/types';
import { degToRad, metres } from '../../src/optics/units';
import { withGaze } from '../../src/sitter/gaze';
import type { Sitter } from '../../src/sitter/types';
import {
  type LampSetting,
  type PlacedSitter,
  Stage,
  type StageHandle,
  type StudioLight,
  USUAL_LIGHT,
} from '../../src/stage';
import { withCard } from './card';
import type { Cell, LampChange, Sheet } from './cell';
import { personFor } from './people';

interface Preview {
  /** One cell's picture as RGBA. */
  take(cell: Cell, width: number, height: number, samples: number): Promise<ImageData>;
  /** A whole sheet as a JPEG, base64, and what could not be taken. */
  sheet(sheet: Sheet): Promise<{ readonly image: string; readonly missing: readonly string[] }>;
  /** One cell's picture as a PNG, base64. */
  png(cell: Cell, width: number, height: number, samples: number): Promise<string>;
}
declare global {
  interface Window {
    preview: Preview;
  }
}

function cameraOf(cell: Cell, aspect: number): Camera {
  const { distance = 1.5, frame = 0.42, eyesAt = 0.4, eyesAcross = 0.5 } = cell;
  const sensor = { width: metres(0.036 * aspect), height: metres(0.036) };
  const focal = focalForFrame(metres(frame), metres(distance), sensor.height);
  if (!focal.ok) throw new Error(focal.reason);
  const camera = cameraAt({
    standpoint: metres(distance),
    height: metres(0),
    tilt: degToRad(0),
    focal: focal.value,
    sensor,
    eyesAt,
    eyesAcross,
  });
  if (!camera.ok) throw new Error(camera.reason);
  return camera.value;
}

function lampOf(usual: LampSetting, change: LampChange = {}): LampSetting {
  const { azimuth, elevation, softness, ...rest } = change;
  return {
    ...usual,
    ...rest,
    ...(azimuth !== undefined && { azimuth: degToRad(azimuth) }),
    ...(elevation !== undefined && { elevation: degToRad(elevation) }),
    ...(softness !== undefined && { size: softness * (rest.distance ?? usual.distance) }),
  };
}

const lightOf = ({ light = {} }: Cell): StudioLight => ({
  key: lampOf(USUAL_LIGHT.key, light.key),
  fill: lampOf(USUAL_LIGHT.fill, light.fill),
  hair: lampOf(USUAL_LIGHT.hair, light.hair),
  background: lampOf(USUAL_LIGHT.background, light.background),
});

/** Where the lens is in the frame of a sitter that is turned and stands aside. */
function lensFor([x, y, z]: Vec3, at: Vec3, turn: number): Vec3 {
  const [dx, dy, dz] = [x - at[0], y - at[1], z - at[2]];
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  return [c * dx - s * dz, dy, s * dx + c * dz];
}

function looking(sitter: Sitter, gaze: Cell['gaze'], lens: Vec3): Sitter {
  if (!gaze) return sitter;
  if (gaze === 'lens') return withGaze(sitter, lens);
  return withGaze(sitter, { yaw: degToRad(gaze[0]), pitch: degToRad(gaze[1]) });
}

async function companyOf(cell: Cell, camera: Camera): Promise<PlacedSitter[]> {
  const turn = degToRad(cell.turn ?? 0);
  const first = looking(
    await personFor(cell),
    cell.gaze,
    lensFor(camera.position, [0, 0, 0], turn),
  );
  const company: PlacedSitter[] = [
    { sitter: cell.card ? withCard(first) : first, at: [0, 0, 0], turn },
  ];
  if (cell.beside) {
    const { at, turn: aside = 0 } = cell.beside;
    const lens = lensFor(camera.position, at, degToRad(aside));
    const second = looking(await personFor(cell.beside), cell.gaze, lens);
    company.push({ sitter: second, at, turn: degToRad(aside) });
  }
  return company;
}

interface Scene {
  readonly cell: Cell;
  readonly camera: Camera;
  readonly sitters: readonly PlacedSitter[];
}

let setScene: (scene: Scene) => void = () => undefined;
let gotReady: (handle: StageHandle) => void = () => undefined;
const ready = new Promise<StageHandle>((resolve) => {
  gotReady = resolve;
});

function Page() {
  const [scene, set] = useState<Scene | null>(null);
  useEffect(() => {
    setScene = set;
  }, []);
  if (!scene) return null;
  const { cell, camera, sitters } = scene;
  return (
    <Stage
      pictures={[{ letter: 'A', camera, sitters, rect: { x: 0, y: 0, width: 8, height: 10 } }]}
      sitter={(sitters[0] as PlacedSitter).sitter}
      light={lightOf(cell)}
      room={{
        backdrop: cell.backdrop ?? 2,
        cameraWall: 3,
        behindCamera: 0.4,
        hall: {
          left: 3.6,
          right: 3.6,
          height: 3.5,
          depth: 10,
          behind: 0,
          sheet: null,
          corner: null,
        },
      }}
      look={cell.look ?? 'photo'}
      onReady={gotReady}
    />
  );
}

async function take(cell: Cell, width: number, height: number, samples: number) {
  const camera = cameraOf(cell, width / height);
  const sitters = await companyOf(cell, camera);
  const hang = () => flushStage(() => flushSync(() => setScene({ cell, camera, sitters })));
  hang();
  const handle = await ready;
  hang();
  advance(performance.now());
  const image = new ImageData(width, height);
  let at = 0;
  for await (const band of handle.renderPicture(camera, width, height, { samples, sitters })) {
    image.data.set(band, at);
    at += band.length;
  }
  return image;
}

async function encoded(canvas: OffscreenCanvas, type: string): Promise<string> {
  const blob = await canvas.convertToBlob({ type, quality: 0.82 });
  const bytes = new Uint8Array(await blob.arrayBuffer());
  let binary = '';
  for (let i = 0; i < bytes.length; i += 0x8000)
    binary += String.fromCharCode(...bytes.subarray(i, i + 0x8000));
  return btoa(binary);
}

const CAPTION = 22;
const GAP = 6;

async function sheetOf({ columns, width, height, cells, samples = 4 }: Sheet) {
  const missing: string[] = [];
  const rows = Math.ceil(cells.length / columns);
  const canvas = new OffscreenCanvas(
    columns * (width + GAP) + GAP,
    rows * (height + CAPTION + GAP) + GAP,
  );
  const pen = canvas.getContext('2d');
  if (!pen) throw new Error('no canvas to lay the sheet on');
  pen.fillStyle = '#c9c9c9';
  pen.fillRect(0, 0, canvas.width, canvas.height);
  pen.fillStyle = '#222';
  pen.font = '13px sans-serif';
  for (const [i, cell] of cells.entries()) {
    const x = GAP + (i % columns) * (width + GAP);
    const y = GAP + Math.floor(i / columns) * (height + CAPTION + GAP);
    try {
      pen.putImageData(await take(cell, width, height, samples), x, y);
    } catch (error) {
      missing.push(`${cell.label}: ${error}`);
    }
    pen.fillText(cell.label, x + 2, y + height + 15, width - 4);
  }
  return { image: await encoded(canvas, 'image/jpeg'), missing };
}

async function pngOf(cell: Cell, width: number, height: number, samples: number) {
  const canvas = new OffscreenCanvas(width, height);
  canvas.getContext('2d')?.putImageData(await take(cell, width, height, samples), 0, 0);
  return encoded(canvas, 'image/png');
}

const wall = document.getElementById('wall');
if (wall) createRoot(wall).render(<Page />);
window.preview = { take, sheet: sheetOf, png: pngOf };
