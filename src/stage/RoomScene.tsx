import { type Ref, useEffect, useMemo } from 'react';
import { type Group, MeshBasicMaterial } from 'three';
import type { RoomRun } from '../session/kit';
import { LAYER } from './layers';
import type { Materials } from './materials';
import { furniture, windowPanes } from './room/furniture';
import { hallShell } from './room/shell';

export interface RoomSceneProps {
  readonly room: RoomRun;
  /** The whole hall: its height is that of the floor of whoever stands in it. */
  readonly hall: Ref<Group>;
  readonly materials: Materials;
}

/** The hall. It moves as one when the backdrop's distance changes; it is built anew only for another size. */
export function RoomScene({ room, hall, materials }: RoomSceneProps) {
  const { left, right, height, depth } = room.hall;
  const parts = useMemo(() => {
    const hall = { left, right, height, depth };
    return {
      shell: hallShell(hall),
      furniture: furniture(hall),
      panes: windowPanes(hall),
      glow: new MeshBasicMaterial({ vertexColors: true }),
    };
  }, [left, right, height, depth]);
  useEffect(
    () => () => {
      for (const part of Object.values(parts)) part?.dispose();
    },
    [parts],
  );
  return (
    <group ref={hall} position-z={-room.backdrop}>
      <mesh geometry={parts.shell} material={materials.room} layers={LAYER.room} receiveShadow />
      {parts.furniture && (
        <mesh
          geometry={parts.furniture}
          material={materials.room}
          layers={LAYER.room}
          castShadow
          receiveShadow
        />
      )}
      {parts.panes && <mesh geometry={parts.panes} material={parts.glow} layers={LAYER.room} />}
    </group>
  );
}
