/** Draws the pictures that changed, each into its own rectangle of the one canvas, and leaves the others. */
import type { Scene, WebGLRenderer } from 'three';
import type { Camera } from '../optics/types';
import type { RoomRun } from '../session/kit';
import type { Letter } from '../session/types';
import type { Company, PlacedSitter } from './company';
import { depthRange } from './depthRange';
import { type Detail, detailFor, pixelsPerMetre } from './detail';
import { hallBounds } from './floor';
import { drawLook, isLit, type Look } from './looks';
import type { Materials } from './materials';
import { aim, bareCamera } from './projection';
import { type Rect, sameRect, type Viewport, viewportOf } from './rects';
import type { ShadowedLamp, ShadowMaps } from './shadows';

export interface StagePicture {
  readonly letter: Letter;
  readonly camera: Camera;
  /** CSS pixels from the container's upper left corner. */
  readonly rect: Rect;
  /** Another camera's picture in the same place, right of `from` (share of the width). */
  readonly second?: {
    readonly camera: Camera;
    readonly from: number;
    readonly sitters?: readonly PlacedSitter[];
  };
  /** Who is in it; the stage's own sitter, at the origin, unless told. */
  readonly sitters?: readonly PlacedSitter[];
}

/** A picture with its sitters found. */
export interface Hung {
  readonly letter: Letter;
  readonly camera: Camera;
  readonly rect: Rect;
  readonly company: Company;
  readonly second: {
    readonly camera: Camera;
    readonly from: number;
    readonly company: Company;
  } | null;
}

/** What all pictures share. A new object means that the thing changed. */
export interface Setting {
  readonly light: object;
  readonly room: RoomRun;
  readonly look: Look;
  readonly landmarks: object;
}

export interface Hanging {
  readonly pictures: readonly Hung[];
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
  /** No shadow drawn before counts any more. */
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
function samePicture(a: Hung, b: Hung): boolean {
  if (a.company !== b.company || !sameView(a.camera, b.camera)) return false;
  if (!a.second || !b.second) return a.second === b.second;
  return (
    a.second.from === b.second.from &&
    a.second.company === b.second.company &&
    sameView(a.second.camera, b.second.camera)
  );
}

/** What has to be drawn to come from one state of the wall to the next. */
export function todo(before: Hanging | null, now: Hanging): Todo {
  const all = now.pictures.map(({ letter }) => letter);
  if (!before) return { clear: true, shadows: true, letters: all };
  const [was, is] = [before.setting, now.setting];
  const shadows = was.light !== is.light || was.room !== is.room;
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
    .filter((picture, i) => !samePicture(before.pictures[i] as Hung, picture))
    .map(({ letter }) => letter);
  return { clear: false, shadows: false, letters };
}

/** What the wall draws with. */
export interface WallTools {
  readonly renderer: WebGLRenderer;
  readonly scene: Scene;
  readonly materials: Materials;
  readonly shadows: ShadowMaps;
  /** Makes one company the one that is seen, on its floor. */
  readonly stand: (company: Company, detail: Detail) => void;
}

export class Wall {
  /** Pictures drawn since the start. */
  renders = 0;
  private drawn: Hanging | null = null;
  private readonly details = new Map<Letter, Detail>();
  private readonly camera = bareCamera();

  constructor(private readonly tools: WallTools) {}

  /** After a lost context nothing that was drawn or prepared is left. */
  forget(): void {
    this.drawn = null;
    this.tools.shadows.forget();
  }

  /** Makes a company the one that is seen, with its shadows. */
  stand(company: Company, lamps: readonly ShadowedLamp[], lit: boolean, detail: Detail): void {
    const { renderer, scene, shadows, stand } = this.tools;
    stand(company, detail);
    if (lit) shadows.use(renderer, scene, lamps, company, detail);
  }

  /** Draws what changed; returns the letters drawn. */
  draw(hanging: Hanging, lamps: readonly ShadowedLamp[]): readonly Letter[] {
    const { renderer, scene, materials } = this.tools;
    const { clear, shadows, letters } = todo(this.drawn, hanging);
    if (shadows) this.tools.shadows.forget();
    this.drawn = hanging;
    if (clear) this.clearAll();
    if (letters.length === 0) return letters;
    const { look, room } = hanging.setting;
    const show = (
      letter: Letter,
      rect: Rect,
      { camera, company }: Pick<Hung, 'camera' | 'company'>,
      from: number,
      to: number,
    ) => {
      const port = viewportOf(rect, hanging.scale, hanging.height);
      const detail = detailFor(
        pixelsPerMetre(camera, port.height),
        this.details.get(letter) ?? null,
      );
      this.details.set(letter, detail);
      this.stand(company, lamps, isLit(look), detail);
      const hall = hallBounds(company.floor, room);
      aim(this.camera, camera, depthRange(camera, company.bounds, hall));
      this.open(port, from, to);
      drawLook(renderer, scene, this.camera, materials, look);
      this.seal();
      this.renders += 1;
    };
    for (const picture of hanging.pictures) {
      const { letter, rect, second } = picture;
      if (!letters.includes(letter)) continue;
      show(letter, rect, picture, 0, second?.from ?? 1);
      if (second) show(letter, rect, second, second.from, 1);
    }
    renderer.setScissorTest(false);
    return letters;
  }

  private clearAll(): void {
    const { renderer } = this.tools;
    renderer.setScissorTest(false);
    renderer.setClearColor(0x000000, 0);
    renderer.clear();
  }

  /** Makes what is drawn opaque: hair blends by alpha, and the page would shine through. */
  private seal(): void {
    const { renderer } = this.tools;
    const gl = renderer.getContext();
    gl.colorMask(false, false, false, true);
    renderer.clear(true, false, false);
    gl.colorMask(true, true, true, true);
  }

  /** Makes a picture's part between two shares of its width the one drawn on. */
  private open(port: Viewport, from: number, to: number): void {
    const { renderer } = this.tools;
    const ratio = renderer.getPixelRatio();
    const set = ({ x, y, width, height }: Rect) =>
      [x / ratio, y / ratio, width / ratio, height / ratio] as const;
    const [start, end] = [Math.round(from * port.width), Math.round(to * port.width)];
    renderer.setViewport(...set(port));
    renderer.setScissor(...set({ ...port, x: port.x + start, width: end - start }));
    renderer.setScissorTest(true);
    renderer.setClearColor(0x000000, 1);
    renderer.clear();
  }
}
