/** The stage's meshes and lamps as a plain three.js scene: one layer, culled as three.js does by itself. */
import { Mesh, MeshBasicMaterial, Scene, SpotLight, type Vector2 } from 'three';
import type { Light, Room } from '../../../src/session/types';
import type { Sitter, SitterMesh } from '../../../src/sitter/types';
import type { Bounds } from '../../../src/stage/depthRange';
import { floorHeight } from '../../../src/stage/floor';
import { KEY_MAP, placeLamp, REACH, RIM_MAP } from '../../../src/stage/Lamps';
import {
  aimedThrow,
  backdropLamp,
  intensityAt,
  keyLamp,
  type Lamp,
  rimLamp,
  throwOf,
} from '../../../src/stage/lamps';
import { furniture, windowPanes } from '../../../src/stage/room/furniture';
import { hallShell } from '../../../src/stage/room/shell';
import { isSingleHairs, meshGeometry } from '../../../src/stage/SitterScene';
import type { ShadowedLamp } from '../../../src/stage/shadows';
import type { Wardrobe } from './wardrobe';

export interface BareScene {
  readonly scene: Scene;
  /** Lamps whose shadows count: key, rim. */
  readonly shadowed: readonly ShadowedLamp[];
  readonly wear: (materials: Wardrobe) => void;
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

export function bareScene(sitter: Sitter, bounds: Bounds, light: Light, room: Room): BareScene {
  const scene = new Scene();
  const [key, rim, wall] = [keyLamp(light), rimLamp(light, room), backdropLamp(room)];
  const shadowed = [
    { lamp: key, map: KEY_MAP },
    { lamp: rim, map: RIM_MAP },
  ].map(({ lamp, map }) => ({
    light: lampLight(scene, lamp, throwOf(lamp), map),
    diameter: lamp.diameter,
    nearest: throwOf(lamp) - REACH,
  }));
  lampLight(scene, wall, aimedThrow(wall), null);

  const figure = sitter.meshes.map((mesh) => {
    const object = new Mesh(meshGeometry(mesh));
    object.castShadow = !isSingleHairs(mesh);
    return object;
  });
  const [shell, pieces] = [new Mesh(hallShell()), new Mesh(furniture())];
  const panes = new Mesh(windowPanes(), new MeshBasicMaterial({ vertexColors: true }));
  pieces.castShadow = true;
  for (const mesh of [...figure, pieces, shell]) mesh.receiveShadow = true;
  for (const mesh of [shell, pieces, panes])
    mesh.position.set(0, floorHeight(sitter, bounds), -room.backdrop);
  scene.add(shell, pieces, panes, ...figure);
  return {
    scene,
    shadowed,
    wear: (materials) => {
      shell.material = pieces.material = materials.room;
      for (const [i, mesh] of figure.entries())
        mesh.material = materials.of[(sitter.meshes[i] as SitterMesh).substance];
    },
  };
}
