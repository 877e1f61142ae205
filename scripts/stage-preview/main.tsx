/** A page with nothing but the stage, driven by its address: for looking at light and room. */
import { StrictMode, useMemo, useState } from 'react';
import { createRoot } from 'react-dom/client';
import man from '../../models/sitters/adult-man.json';
import woman from '../../models/sitters/adult-woman.json';
import { sculptureUrls } from '../../src/models/browser';
import { cameraAt } from '../../src/optics/camera';
import { focalForFrame } from '../../src/optics/framing';
import type { Camera } from '../../src/optics/types';
import { degToRad, metres } from '../../src/optics/units';
import { LETTERS } from '../../src/session/types';
import { buildSitter } from '../../src/sitter/build';
import { sculptures } from '../../src/sitter/compose';
import { LANDMARKS, type Sitter, type SitterModel, UPRIGHT } from '../../src/sitter/types';
import { type Look, type Rect, Stage, type StageHandle, type StagePicture } from '../../src/stage';

const query = new URLSearchParams(location.search);
const number = (name: string, fallback: number): number => Number(query.get(name) ?? fallback);
const list = (name: string, fallback: string): number[] =>
  (query.get(name) ?? fallback).split(',').map(Number);

const HEIGHT = number('h', 0.42);
const ASPECT = number('aspect', 0.8);

function cameraFrom(standpoint: number) {
  const sensor = { width: metres(0.036 * ASPECT), height: metres(0.036) };
  const focal = focalForFrame(metres(HEIGHT), metres(standpoint), sensor.height);
  if (!focal.ok) throw new Error(focal.reason);
  const camera = cameraAt({
    standpoint: metres(standpoint),
    height: metres(number('height', 0)),
    tilt: degToRad(number('tilt', 0)),
    focal: focal.value,
    sensor,
    eyesAt: number('eyes', 0.38),
    eyesAcross: 0.5,
  });
  if (!camera.ok) throw new Error(camera.reason);
  return camera.value;
}

function picturesOf(standpoints: readonly number[]): StagePicture[] {
  const gap = 24;
  const room = { width: innerWidth - gap, height: innerHeight - 2 * gap };
  const width = Math.min(room.width / standpoints.length - gap, room.height * ASPECT);
  return standpoints.map((standpoint, i) => ({
    letter: LETTERS[i] ?? 'A',
    camera: cameraFrom(standpoint),
    rect: { x: gap + i * (width + gap), y: gap, width, height: width / ASPECT },
  }));
}

interface Preview {
  handle: StageHandle | null;
  unavailable: string | null;
  move: (standpoints: readonly number[]) => void;
  setLook: (look: Look) => void;
  setAzimuth: (degrees: number) => void;
  camera: typeof cameraFrom;
  cameras: readonly Camera[];
  rects: readonly Rect[];
}
declare global {
  interface Window {
    preview: Preview;
  }
}

/** A grey card of 18 % at the eyes, square to the lens, in place of the face. */
function withCard(sitter: Sitter): Sitter {
  const half = 0.06;
  const corners = [-half, -half, half, -half, half, half, -half, half];
  const positions = Float32Array.from({ length: 12 }, (_, i) =>
    i % 3 === 2 ? 0.05 : (corners[Math.floor(i / 3) * 2 + (i % 3)] ?? 0),
  );
  const card: Sitter['meshes'][number] = {
    name: 'card',
    substance: 'shoes',
    positions,
    normals: Float32Array.from({ length: 12 }, (_, i) => (i % 3 === 2 ? 1 : 0)),
    colours: new Uint8Array(12).fill(46),
    indices: Uint32Array.of(0, 1, 2, 0, 2, 3),
    regions: new Uint8Array(4),
  };
  return { ...sitter, meshes: [...sitter.meshes, card] };
}

async function sitterOf(who: string): Promise<Sitter> {
  const model = (who === 'man' ? man : woman) as unknown as SitterModel;
  const read = async (name: string): Promise<Uint8Array> =>
    new Uint8Array(await (await fetch(sculptureUrls[name] as string)).arrayBuffer());
  const sculpture = await sculptures(read)(model, model.looks);
  const sitter = buildSitter(
    sculpture,
    model,
    {},
    {
      ...UPRIGHT,
      bodyTurn: degToRad(number('body', 0)),
      headTurn: degToRad(number('turn', 0)),
      headNod: degToRad(number('nod', 0)),
      headTilt: degToRad(number('lean', 0)),
    },
  );
  return query.has('card') ? withCard(sitter) : sitter;
}

function Page({ sitter }: { sitter: Sitter }) {
  const [standpoints, setStandpoints] = useState<readonly number[]>(list('d', '0.4,2.4'));
  const [look, setLook] = useState<Look>((query.get('look') ?? 'photo') as Look);
  const [azimuth, setAzimuth] = useState(number('azimuth', 38));
  const pictures = useMemo(() => picturesOf(standpoints), [standpoints]);
  const light = useMemo(
    () => ({
      azimuth: degToRad(azimuth),
      elevation: degToRad(number('elevation', 34)),
      softness: number('softness', 0.3),
    }),
    [azimuth],
  );
  const room = useMemo(
    () => ({ backdrop: number('backdrop', 2), cameraWall: 3, behindCamera: 0.4 }),
    [],
  );
  window.preview = {
    ...(window.preview ?? { handle: null, unavailable: null }),
    move: setStandpoints,
    setLook,
    setAzimuth,
    camera: cameraFrom,
    cameras: pictures.map((picture) => picture.camera),
    rects: pictures.map((picture) => picture.rect),
  };
  return (
    <Stage
      pictures={pictures}
      sitter={sitter}
      light={light}
      room={room}
      look={look}
      landmarks={LANDMARKS}
      onReady={(handle) => {
        window.preview.handle = handle;
      }}
      onUnavailable={(reason) => {
        window.preview.unavailable = reason;
      }}
    />
  );
}

const wall = document.getElementById('wall');
if (wall) {
  const sitter = await sitterOf(query.get('who') ?? 'woman');
  createRoot(wall).render(
    <StrictMode>
      <Page sitter={sitter} />
    </StrictMode>,
  );
}
