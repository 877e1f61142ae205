import { type Ref, useEffect, useMemo } from 'react';
import { type BufferGeometry, type Group, MeshBasicMaterial } from 'three';
import type { RoomRun } from '../session/kit';
import { endWall } from './floor';
import { LAYER } from './layers';
import type { Materials } from './materials';
import { furniture, windowPanes } from './room/furniture';
import { hangingSheet } from './room/sheet';
import { hallShell } from './room/shell';

export interface RoomSceneProps {
  readonly room: RoomRun;
  /** The whole hall: its height is that of the floor of whoever stands in it. */
  readonly hall: Ref<Group>;
  readonly materials: Materials;
}

function build({ hall }: RoomRun) {
  const sheet = hall.sheet && hangingSheet(hall, hall.sheet);
  return {
    shell: hallShell(hall),
    furniture: furniture(hall),
    panes: windowPanes(hall),
    glow: new MeshBasicMaterial({ vertexColors: true }),
    face: sheet?.face ?? null,
    behind: sheet?.behind ?? null,
  };
}

/** The hall and the sheet in it. They move with the sitter's place; they are built anew only for another size. */
export function RoomScene({ room, hall, materials }: RoomSceneProps) {
  const size = JSON.stringify(room.hall);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the hall is told by its values
  const parts = useMemo(() => build(room), [size]);
  useEffect(
    () => () => {
      for (const part of Object.values(parts)) part?.dispose();
    },
    [parts],
  );
  const casting = (geometry: BufferGeometry | null) =>
    geometry && (
      <mesh
        geometry={geometry}
        material={materials.room}
        layers={LAYER.room}
        castShadow
        receiveShadow
      />
    );
  return (
    <group ref={hall}>
      <group position-z={endWall(room)}>
        <mesh geometry={parts.shell} material={materials.room} layers={LAYER.room} receiveShadow />
        {casting(parts.furniture)}
        {parts.panes && <mesh geometry={parts.panes} material={parts.glow} layers={LAYER.room} />}
      </group>
      <group position-z={-room.backdrop}>
        {parts.face && (
          <mesh
            geometry={parts.face}
            material={materials.paper}
            layers={LAYER.room}
            receiveShadow
          />
        )}
        {casting(parts.behind)}
      </group>
    </group>
  );
}
