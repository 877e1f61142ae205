import { useFrame, useThree } from '@react-three/fiber';
import { useCallback, useEffect, useLayoutEffect, useMemo, useRef, useState } from 'react';
import { Color, type Group } from 'three';
import type { Camera } from '../optics/types';
import type { RoomRun } from '../session/kit';
import type { Letter } from '../session/types';
import type { LandmarkName, Sitter } from '../sitter/types';
import { alone, Companies, type Company, type PlacedSitter } from './company';
import { depthRange } from './depthRange';
import { type Detail, detailFor, pixelsPerMetre } from './detail';
import { Figures } from './figures';
import { hallBounds } from './floor';
import { Lamps } from './Lamps';
import { lampUniforms, setFill, setSheet } from './lampUniforms';
import { isLit, type Look } from './looks';
import { createMaterials } from './materials';
import { RoomScene } from './RoomScene';
import { type ShadowedLamp, ShadowMaps } from './shadows';
import { drawSilhouette, type Silhouette } from './silhouette';
import type { StillSubject } from './still';
import type { StillOptions } from './stillOptions';
import type { StudioLight } from './studio';
import { type Hanging, type StagePicture, Wall } from './wall';

/** What a page can ask of a stage that is ready. */
export interface StageHandle {
  /**
   * Renders a camera's picture at a size of its own, whatever the screen shows; see `renderStill` for
   * bands, samples, cancelling and errors.
   */
  readonly renderPicture: (
    camera: Camera,
    width: number,
    height: number,
    options?: PictureOptions,
  ) => AsyncGenerator<Uint8Array<ArrayBuffer>, void, undefined>;
  /** The sitters' mask in a camera's picture. */
  readonly silhouette: (camera: Camera, width: number, options?: InIt) => Silhouette;
  /** Pictures and shadow maps drawn since the start; geometries that the graphics processor holds now. */
  readonly counts: () => {
    readonly renders: number;
    readonly shadowUpdates: number;
    readonly geometries: number;
  };
}

/** Who is in it; the stage's own sitter unless told. */
export interface InIt {
  readonly sitters?: readonly PlacedSitter[];
}

export interface PictureOptions extends StillOptions, InIt {
  /** The wall's own look, or a photograph where the wall shows no light, unless told. */
  readonly look?: Look;
}

export interface StageSceneProps {
  readonly pictures: readonly StagePicture[];
  readonly sitter: Sitter;
  readonly light: StudioLight;
  readonly room: RoomRun;
  readonly look: Look;
  readonly landmarks: readonly LandmarkName[];
  /** Buffer pixels per CSS pixel. */
  readonly scale: number;
  /** Counts restored graphics contexts. */
  readonly generation: number;
  readonly onReady: (handle: StageHandle) => void;
  readonly onDrawn: (letters: readonly Letter[]) => void;
}

const CLAY = new Color(0.32, 0.32, 0.32);

/** The scene and its drawing loop; lives inside the renderer's React root. */
export function StageScene(props: StageSceneProps) {
  const { pictures, sitter, light, room, look, landmarks, scale, generation } = props;
  const renderer = useThree((state) => state.gl);
  const scene = useThree((state) => state.scene);
  const invalidate = useThree((state) => state.invalidate);

  const uniforms = useMemo(lampUniforms, []);
  const materials = useMemo(() => createMaterials(uniforms, CLAY), [uniforms]);
  const shadows = useMemo(() => new ShadowMaps(uniforms), [uniforms]);
  useEffect(
    () => () => {
      materials.dispose();
      shadows.dispose();
    },
    [materials, shadows],
  );
  const figures = useMemo(
    () => new Figures(scene, materials, new Set(landmarks)),
    [scene, materials, landmarks],
  );
  useEffect(() => () => figures.dispose(), [figures]);
  const hall = useRef<Group>(null);
  const standing = useRef({ figures, room });
  standing.current = { figures, room };
  const wall = useMemo(() => {
    const stand = (company: Company, detail: Detail) => {
      standing.current.figures.show(company, detail);
      if (hall.current) hall.current.position.y = company.floor;
      setSheet(uniforms, standing.current.room, company.floor);
    };
    return new Wall({ renderer, scene, materials, shadows, stand });
  }, [renderer, scene, materials, shadows, uniforms]);

  const companies = useMemo(() => new Companies(), []);
  const hung = useMemo(() => {
    const own = alone(sitter);
    const lists = pictures.flatMap(({ sitters, second }) => [
      sitters ?? own,
      second?.sitters ?? own,
    ]);
    const found = companies.of(lists);
    return pictures.map(({ letter, camera, rect, second }, i) => ({
      letter,
      camera,
      rect,
      company: found[2 * i] as Company,
      second: second ? { ...second, company: found[2 * i + 1] as Company } : null,
    }));
  }, [pictures, sitter, companies]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what hangs is what makes it look
  useLayoutEffect(() => {
    figures.keep(companies.present);
    shadows.keep(companies.present);
  }, [hung, companies, figures, shadows]);
  useLayoutEffect(() => setFill(uniforms, light.fill), [uniforms, light.fill]);

  const setting = useMemo(() => ({ light, room, look, landmarks }), [light, room, look, landmarks]);
  const lamps = useRef<readonly ShadowedLamp[]>([]);
  const setLamps = useCallback((set: readonly ShadowedLamp[]) => {
    lamps.current = set;
  }, []);

  // biome-ignore lint/correctness/useExhaustiveDependencies: a new generation is what makes it forget
  useLayoutEffect(() => wall.forget(), [wall, generation]);
  // Whatever the commit changed is looked at once; the wall decides whether anything is drawn.
  useLayoutEffect(() => invalidate());

  useFrame(({ gl }) => {
    if (gl.getContext().isContextLost()) return;
    const { width, height } = gl.domElement;
    const hanging: Hanging = { pictures: hung, setting, width, height, scale };
    const drawn = wall.draw(hanging, lamps.current);
    if (drawn.length > 0) props.onDrawn(drawn);
  }, 1);

  const latest = useRef({ setting, sitter });
  latest.current = { setting, sitter };
  const [handle] = useState((): StageHandle => {
    const companyFor = ({ sitters }: InIt): Company => {
      const company = companies.invite(sitters ?? alone(latest.current.sitter));
      standing.current.figures.keep(companies.present);
      shadows.keep(companies.present);
      return company;
    };
    const rangeFor = (camera: Camera, { bounds, floor }: Company) =>
      depthRange(camera, bounds, hallBounds(floor, latest.current.setting.room));
    const subjectNow = (camera: Camera, height: number, options: PictureOptions): StillSubject => {
      const taken = latest.current;
      const company = companyFor(options);
      const { look } = taken.setting;
      const detail = detailFor(pixelsPerMetre(camera, height), null);
      return {
        renderer,
        scene,
        materials,
        uniforms,
        look: options.look ?? (isLit(look) ? look : 'photo'),
        range: rangeFor(camera, company),
        prepare: () => wall.stand(company, lamps.current, true, detail),
        current: () =>
          latest.current.setting === taken.setting &&
          latest.current.sitter === taken.sitter &&
          !renderer.getContext().isContextLost(),
      };
    };
    return {
      renderPicture: async function* (camera, width, height, options = {}) {
        const subject = subjectNow(camera, height, options);
        // Nobody waits for it before the first picture.
        const { renderStill } = await import('./still');
        yield* renderStill(subject, camera, width, height, options);
      },
      silhouette: (camera, width, options = {}) => {
        const company = companyFor(options);
        wall.stand(company, lamps.current, false, 'fine');
        const range = rangeFor(camera, company);
        return drawSilhouette(renderer, scene, materials, camera, range, width);
      },
      counts: () => ({
        renders: wall.renders,
        shadowUpdates: shadows.updates,
        geometries: renderer.info.memory.geometries,
      }),
    };
  });
  const { onReady } = props;
  useEffect(() => onReady(handle), [handle, onReady]);

  return (
    <>
      <Lamps light={light} room={room} onSet={setLamps} />
      <RoomScene room={room} hall={hall} materials={materials} />
    </>
  );
}
