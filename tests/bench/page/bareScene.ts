/** The stage's meshes and lamps as a plain three.js scene: one layer, culled as three.js does by itself. */
import { Mesh, MeshBasicMaterial, Scene, SpotLight, type Vector2 } from 'three';
import type { RoomRun } from '../../../src/session/kit';
import type { SitterMesh } from '../../../src/sitter/types';
import { type Company, isShading } from '../../../src/stage/company';
import type { Detail } from '../../../src/stage/detail';
import { endWall } from '../../../src/stage/floor';
import { hold } from '../../../src/stage/geometries';
import { HAIR_MAP, KEY_MAP, placeLamp } from '../../../src/stage/Lamps';
import {
  aimedThrow,
  backdropLamp,
  hairLamp,
  intensityAt,
  keyLamp,
  type Lamp,
  throwOf,
} from '../../../src/stage/lamps';
import { furniture, windowPanes } from '../../../src/stage/room/furniture';
import { hangingSheet } from '../../../src/stage/room/sheet';
import { hallShell } from '../../../src/stage/room/shell';
import type { ShadowedLamp } from '../../../src/stage/shadows';
import type { StudioLight } from '../../../src/stage/studio';
import type { Wardrobe } from './wardrobe';

export interface BareScene {
  readonly scene: Scene;
  /** Lamps whose shadows count: key, hair light. */
  readonly shadowed: readonly ShadowedLamp[];
  readonly wear: (materials: Wardrobe) => void;
  /** Draws the figure as finely as the stage does at the pictures' size. */
  readonly setDetail: (detail: Detail) => void;
}

function lampLight(scene: Scene, lamp: Lamp, distance: number, map: Vector2 | null): SpotLight {
  const light = new SpotLight(0xffffff, intensityAt(lamp.strength, distance));
  light.position.set(...lamp.position);
  light.angle = lamp.beam;
  light.penumbra = 1;
  light.castShadow = map !== null;
  if (map) light.shadow.mapSize.copy(map);
  placeLamp(light, lamp);
  light.shadow.camera.layers.enableAll();
  // The studio's shaders have a bias of their own and do not read this one.
  light.shadow.bias = -0.002;
  scene.add(light, light.target);
  return light;
}

export function bareScene(company: Company, light: StudioLight, room: RoomRun): BareScene {
  const scene = new Scene();
  const [key, hair, wall] = [keyLamp(light), hairLamp(light, room), backdropLamp(light, room)];
  const shadowed = [
    { lamp: key, map: KEY_MAP },
    { lamp: hair, map: HAIR_MAP },
  ].map(({ lamp, map }) => ({
    light: lampLight(scene, lamp, throwOf(lamp), map),
    diameter: lamp.diameter,
  }));
  lampLight(scene, wall, aimedThrow(wall), null);

  const meshes: readonly SitterMesh[] = company.sitters.flatMap(({ sitter }) => sitter.meshes);
  const figure = meshes.map((mesh) => {
    const object = new Mesh(hold(mesh).fine);
    object.castShadow = isShading(mesh);
    return object;
  });
  const [shell, pieces] = [
    new Mesh(hallShell(room.hall)),
    new Mesh(furniture(room.hall) ?? undefined),
  ];
  const panes = new Mesh(
    windowPanes(room.hall) ?? undefined,
    new MeshBasicMaterial({ vertexColors: true }),
  );
  const sheet = room.hall.sheet && hangingSheet(room.hall, room.hall.sheet);
  const paper = new Mesh(sheet?.face);
  const behind = new Mesh(sheet?.behind);
  for (const mesh of [pieces, behind]) mesh.castShadow = true;
  for (const mesh of [...figure, pieces, shell, paper, behind]) mesh.receiveShadow = true;
  for (const mesh of [shell, pieces, panes]) mesh.position.set(0, company.floor, endWall(room));
  for (const mesh of [paper, behind]) mesh.position.set(0, company.floor, -room.backdrop);
  scene.add(shell, pieces, panes, paper, behind, ...figure);
  return {
    scene,
    shadowed,
    setDetail: (detail) => {
      for (const [i, mesh] of figure.entries())
        mesh.geometry = hold(meshes[i] as SitterMesh)[detail];
    },
    wear: (materials) => {
      shell.material = pieces.material = behind.material = materials.room;
      paper.material = materials.paper;
      for (const [i, mesh] of figure.entries())
        mesh.material = materials.of[(meshes[i] as SitterMesh).substance];
    },
  };
}
