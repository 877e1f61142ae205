/** Draws the pictures that changed, each into its own rectangle of the one canvas, and leaves the others. */
import type { Scene, WebGLRenderer } from 'three';
import type { Camera } from '../optics/types';
import type { Letter } from '../session/types';
import { type Bounds, depthRange } from './depthRange';
import { drawLook, isLit, type Look } from './looks';
import type { Materials } from './materials';
import { aim, bareCamera } from './projection';
import { type Rect, sameRect, viewportOf } from './rects';
import type { ShadowedLamp, ShadowMaps } from './shadows';

export interface StagePicture {
  readonly letter: Letter;
  readonly camera: Camera;
  /** CSS pixels from the container's upper left corner. */
  readonly rect: Rect;
  /** Another camera's picture in the same place, right of `from` (share of the width). */
  readonly second?: { readonly camera: Camera; readonly from: number };
}

/** What all pictures share. A new object means that the thing changed. */
export interface Setting {
  readonly sitter: object;
  readonly light: object;
  readonly room: object;
  readonly look: Look;
  readonly landmarks: object;
}

export interface Hanging {
  readonly pictures: readonly StagePicture[];
  readonly setting: Setting;
  /** The drawing buffer, pixels. */
  readonly width: number;
  readonly height: number;
  /** Buffer pixels per CSS pixel. */
  readonly scale: number;
}

export interface Todo {
  /** The wall is cleared first: the rectangles moved. */
  readonly clear: boolean;
  readonly shadows: boolean;
  readonly letters: readonly Letter[];
}

/** Do two cameras draw the same? Compared by value: an edit elsewhere makes new, equal cameras. */
const sameView = (a: Camera, b: Camera): boolean =>
  a === b ||
  (a.tilt === b.tilt &&
    a.position.every((value, i) => value === b.position[i]) &&
    EDGES.every((edge) => a.frustum[edge] === b.frustum[edge]));
const EDGES = ['left', 'right', 'bottom', 'top'] as const;

/** Do two pictures that hang in one place look the same? */
function samePicture(a: StagePicture, b: StagePicture): boolean {
  if (!sameView(a.camera, b.camera) || a.second?.from !== b.second?.from) return false;
  return !a.second || !b.second || sameView(a.second.camera, b.second.camera);
}

/** What has to be drawn to come from one state of the wall to the next. */
export function todo(before: Hanging | null, now: Hanging): Todo {
  const all = now.pictures.map(({ letter }) => letter);
  if (!before) return { clear: true, shadows: true, letters: all };
  const [was, is] = [before.setting, now.setting];
  const shadows = was.sitter !== is.sitter || was.light !== is.light || was.room !== is.room;
  const moved =
    before.width !== now.width ||
    before.height !== now.height ||
    before.scale !== now.scale ||
    before.pictures.length !== now.pictures.length ||
    now.pictures.some((picture, i) => {
      const old = before.pictures[i];
      return !old || old.letter !== picture.letter || !sameRect(old.rect, picture.rect);
    });
  if (moved || shadows || was.look !== is.look || was.landmarks !== is.landmarks) {
    return { clear: moved, shadows, letters: all };
  }
  const letters = now.pictures
    .filter((picture, i) => !samePicture(before.pictures[i] as StagePicture, picture))
    .map(({ letter }) => letter);
  return { clear: false, shadows: false, letters };
}

export class Wall {
  /** Pictures drawn since the start. */
  renders = 0;
  shadowUpdates = 0;
  private drawn: Hanging | null = null;
  private shadowsDue = true;
  private readonly camera = bareCamera();

  constructor(
    private readonly renderer: WebGLRenderer,
    private readonly shadows: ShadowMaps,
  ) {}

  /** After a lost context nothing that was drawn or prepared is left. */
  forget(): void {
    this.drawn = null;
    this.shadowsDue = true;
  }

  /** Brings the shadow maps up to date if anything they show has changed. */
  prepare(scene: Scene, lamps: readonly ShadowedLamp[]): void {
    if (!this.shadowsDue) return;
    this.shadows.update(this.renderer, scene, lamps);
    this.shadowsDue = false;
    this.shadowUpdates += 1;
  }

  /** Draws what changed; returns the letters drawn. */
  draw(
    hanging: Hanging,
    scene: Scene,
    materials: Materials,
    lamps: readonly ShadowedLamp[],
    sitter: Bounds,
    room: Bounds,
  ): readonly Letter[] {
    const { clear, shadows, letters } = todo(this.drawn, hanging);
    this.shadowsDue ||= shadows;
    this.drawn = hanging;
    if (clear) this.clearAll();
    if (letters.length === 0) return letters;
    if (isLit(hanging.setting.look)) this.prepare(scene, lamps);
    const show = (camera: Camera, rect: Rect, from: number, to: number) => {
      aim(this.camera, camera, depthRange(camera, sitter, room));
      this.open(rect, from, to, hanging);
      drawLook(this.renderer, scene, this.camera, materials, hanging.setting.look);
      this.renders += 1;
    };
    for (const { letter, camera, rect, second } of hanging.pictures) {
      if (!letters.includes(letter)) continue;
      show(camera, rect, 0, second?.from ?? 1);
      if (second) show(second.camera, rect, second.from, 1);
    }
    this.renderer.setScissorTest(false);
    return letters;
  }

  private clearAll(): void {
    this.renderer.setScissorTest(false);
    this.renderer.setClearColor(0x000000, 0);
    this.renderer.clear();
  }

  /** Makes a picture's rectangle the viewport, and its part between two shares of the width the one drawn on. */
  private open(rect: Rect, from: number, to: number, { scale, height }: Hanging): void {
    const { renderer } = this;
    const ratio = renderer.getPixelRatio();
    const set = ({ x, y, width, height: high }: Rect) =>
      [x / ratio, y / ratio, width / ratio, high / ratio] as const;
    const port = viewportOf(rect, scale, height);
    const [start, end] = [Math.round(from * port.width), Math.round(to * port.width)];
    renderer.setViewport(...set(port));
    renderer.setScissor(...set({ ...port, x: port.x + start, width: end - start }));
    renderer.setScissorTest(true);
    renderer.setClearColor(0x000000, 1);
    renderer.clear();
  }
}
