import { useFrame, useThree } from '@react-three/fiber';
import { useCallback, useEffect, useLayoutEffect, useMemo, useRef, useState } from 'react';
import { Color } from 'three';
import type { Camera } from '../optics/types';
import type { Letter, Light, Room } from '../session/types';
import type { LandmarkName, Sitter } from '../sitter/types';
import { boundsOf, depthRange } from './depthRange';
import { floorHeight, hallBounds } from './floor';
import { Lamps } from './Lamps';
import { lampUniforms, setWhorl } from './lampUniforms';
import { isLit, type Look } from './looks';
import { createMaterials } from './materials';
import { RoomScene } from './RoomScene';
import { SitterScene } from './SitterScene';
import { type ShadowedLamp, ShadowMaps } from './shadows';
import { drawSilhouette, type Silhouette } from './silhouette';
import { renderStill, type StillOptions, type StillSubject } from './still';
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
    options?: StillOptions,
  ) => AsyncGenerator<Uint8Array<ArrayBuffer>, void, undefined>;
  /** The sitter's mask in a camera's picture. */
  readonly silhouette: (camera: Camera, width: number) => Silhouette;
  /** Pictures and shadow maps drawn since the start. */
  readonly counts: () => { readonly renders: number; readonly shadowUpdates: number };
}

export interface StageSceneProps {
  readonly pictures: readonly StagePicture[];
  readonly sitter: Sitter;
  readonly light: Light;
  readonly room: Room;
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
  const wall = useMemo(() => new Wall(renderer, shadows), [renderer, shadows]);
  useEffect(
    () => () => {
      materials.dispose();
      shadows.dispose();
    },
    [materials, shadows],
  );

  const bounds = useMemo(() => boundsOf(sitter.meshes.map((mesh) => mesh.positions)), [sitter]);
  const floor = floorHeight(sitter, bounds);
  const hall = useMemo(() => hallBounds(floor, room.backdrop), [floor, room.backdrop]);
  useLayoutEffect(() => {
    const { vertex, opisthocranion, sellion } = sitter.landmarks;
    setWhorl(uniforms, vertex, opisthocranion, sellion);
  }, [sitter, uniforms]);

  const setting = useMemo(
    () => ({ sitter, light, room, look, landmarks }),
    [sitter, light, room, look, landmarks],
  );
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
    const hanging: Hanging = { pictures, setting, width, height, scale };
    const drawn = wall.draw(hanging, scene, materials, lamps.current, bounds, hall);
    if (drawn.length > 0) props.onDrawn(drawn);
  }, 1);

  const latest = useRef({ setting, bounds, hall });
  latest.current = { setting, bounds, hall };
  const [handle] = useState((): StageHandle => {
    const subjectNow = (camera: Camera): StillSubject => {
      const taken = latest.current;
      return {
        renderer,
        scene,
        materials,
        uniforms,
        look: isLit(taken.setting.look) ? taken.setting.look : 'photo',
        range: depthRange(camera, taken.bounds, taken.hall),
        prepare: () => wall.prepare(scene, lamps.current),
        current: () =>
          latest.current.setting === taken.setting && !renderer.getContext().isContextLost(),
      };
    };
    return {
      renderPicture: (camera, width, height, options) =>
        renderStill(subjectNow(camera), camera, width, height, options),
      silhouette: (camera, width) =>
        drawSilhouette(
          renderer,
          scene,
          materials,
          camera,
          depthRange(camera, latest.current.bounds, latest.current.hall),
          width,
        ),
      counts: () => ({ renders: wall.renders, shadowUpdates: wall.shadowUpdates }),
    };
  });
  const { onReady } = props;
  useEffect(() => onReady(handle), [handle, onReady]);

  return (
    <>
      <Lamps light={light} room={room} onSet={setLamps} />
      <RoomScene room={room} floor={floor} materials={materials} />
      <SitterScene sitter={sitter} materials={materials} landmarks={landmarks} />
    </>
  );
}
