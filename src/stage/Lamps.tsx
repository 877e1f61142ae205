import { type Ref, useLayoutEffect, useRef } from 'react';
import { type SpotLight, Vector2 } from 'three';
import type { Light, Room } from '../session/types';
import {
  aimedThrow,
  backdropLamp,
  intensityAt,
  keyLamp,
  type Lamp,
  rimLamp,
  throwOf,
} from './lamps';
import { LAYER } from './layers';
import type { ShadowedLamp } from './shadows';

export const KEY_MAP = new Vector2(1024, 1024);
export const RIM_MAP = new Vector2(512, 512);
/** The sitter's nearest part stands at most this far before the eyes, towards a lamp. */
export const REACH = 0.35;
const WHITE = 0xffffff;

/** Aims a lamp and sets what its shadow map takes in. */
export function placeLamp(light: SpotLight, lamp: Lamp): void {
  light.target.position.set(...lamp.target);
  light.target.updateMatrixWorld();
  light.layers.enableAll();
  light.shadow.camera.layers.set(LAYER.room);
  light.shadow.camera.layers.enable(LAYER.sitter);
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
  readonly light: Light;
  readonly room: Room;
  /** Told the lamps whose shadows count, whenever they are set anew. */
  readonly onSet: (lamps: readonly ShadowedLamp[]) => void;
}

/** Key, rim and backdrop light, all neutral. The order fixes their places in the shaders. */
export function Lamps({ light, room, onSet }: LampsProps) {
  const key = useRef<SpotLight>(null);
  const rim = useRef<SpotLight>(null);
  const wall = useRef<SpotLight>(null);
  const [keyed, rimmed, walled] = [keyLamp(light), rimLamp(light, room), backdropLamp(room)];

  useLayoutEffect(() => {
    const lamps = [key, rim].map(({ current }, index): ShadowedLamp => {
      const lamp = index === 0 ? keyLamp(light) : rimLamp(light, room);
      if (!current) throw new Error('lamp not mounted');
      placeLamp(current, lamp);
      return { light: current, diameter: lamp.diameter, nearest: throwOf(lamp) - REACH };
    });
    if (wall.current) placeLamp(wall.current, backdropLamp(room));
    onSet(lamps);
  }, [light, room, onSet]);

  return (
    <>
      <LampLight lightRef={key} lamp={keyed} distance={throwOf(keyed)} map={KEY_MAP} />
      <LampLight lightRef={rim} lamp={rimmed} distance={throwOf(rimmed)} map={RIM_MAP} />
      <LampLight lightRef={wall} lamp={walled} distance={aimedThrow(walled)} />
    </>
  );
}
