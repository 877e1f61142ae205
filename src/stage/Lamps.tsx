import { type Ref, useLayoutEffect, useMemo, useRef } from 'react';
import { type SpotLight, Vector2 } from 'three';
import type { RoomRun } from '../session/kit';
import {
  aimedThrow,
  backdropLamp,
  hairLamp,
  intensityAt,
  keyLamp,
  type Lamp,
  throwOf,
} from './lamps';
import { LAYER } from './layers';
import type { ShadowedLamp } from './shadows';
import type { StudioLight } from './studio';

export const KEY_MAP = new Vector2(1024, 1024);
export const HAIR_MAP = new Vector2(512, 512);
const WHITE = 0xffffff;

/** Aims a lamp and sets what its shadow map takes in. */
export function placeLamp(light: SpotLight, lamp: Lamp): void {
  light.target.position.set(...lamp.target);
  light.target.updateMatrixWorld();
  light.layers.enableAll();
  light.shadow.camera.layers.set(LAYER.room);
  light.shadow.camera.layers.enable(LAYER.sitter);
  light.shadow.camera.layers.enable(LAYER.hair);
  light.shadow.camera.near = throwOf(lamp) * 0.3;
  light.shadow.camera.far = throwOf(lamp) + 5;
  light.shadow.normalBias = 0.0008;
}

interface LampLightProps {
  readonly lamp: Lamp;
  readonly distance: number;
  readonly map?: Vector2;
  readonly lightRef: Ref<SpotLight>;
}

function LampLight({ lamp, distance, map, lightRef }: LampLightProps) {
  return (
    <spotLight
      ref={lightRef}
      position={lamp.position}
      angle={lamp.beam}
      penumbra={1}
      intensity={intensityAt(lamp.strength, distance)}
      color={WHITE}
      castShadow={map !== undefined}
      {...(map ? { 'shadow-mapSize': map } : {})}
    />
  );
}

export interface LampsProps {
  readonly light: StudioLight;
  readonly room: RoomRun;
  /** Told the lamps whose shadows count, whenever they are set anew. */
  readonly onSet: (lamps: readonly ShadowedLamp[]) => void;
}

/** Key, hair and backdrop light, all neutral. The order fixes their places in the shaders. */
export function Lamps({ light, room, onSet }: LampsProps) {
  const key = useRef<SpotLight>(null);
  const hair = useRef<SpotLight>(null);
  const wall = useRef<SpotLight>(null);
  const [keyed, haired, walled] = useMemo(
    () => [keyLamp(light), hairLamp(light, room), backdropLamp(light, room)] as const,
    [light, room],
  );

  useLayoutEffect(() => {
    const lamps = [
      { current: key.current, lamp: keyed },
      { current: hair.current, lamp: haired },
    ].map(({ current, lamp }): ShadowedLamp => {
      if (!current) throw new Error('lamp not mounted');
      placeLamp(current, lamp);
      return { light: current, diameter: lamp.diameter };
    });
    if (wall.current) placeLamp(wall.current, walled);
    onSet(lamps);
  }, [keyed, haired, walled, onSet]);

  return (
    <>
      <LampLight lightRef={key} lamp={keyed} distance={throwOf(keyed)} map={KEY_MAP} />
      <LampLight lightRef={hair} lamp={haired} distance={throwOf(haired)} map={HAIR_MAP} />
      <LampLight lightRef={wall} lamp={walled} distance={aimedThrow(walled)} />
    </>
  );
}
