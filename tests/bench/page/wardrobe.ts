/** Three.js's own surfaces, lit by the same fill as an environment map: what the studio's are set against. */
import {
  BackSide,
  Color,
  Mesh,
  MeshBasicMaterial,
  MeshPhysicalMaterial,
  PlaneGeometry,
  PMREMGenerator,
  Scene,
  SphereGeometry,
  type Texture,
  type WebGLRenderer,
} from 'three';
import type { Substance } from '../../../src/sitter/types';
import { fillSurround, WALL_RADIANCE } from '../../../src/stage/fill';
import { type Materials, ROOM_FILL } from '../../../src/stage/materials';
import type { LampSetting } from '../../../src/stage/studio';

export type Wardrobe = Pick<Materials, 'of' | 'room' | 'paper'>;

const glowing = (radiance: number, side = BackSide) =>
  new MeshBasicMaterial({ color: new Color().setScalar(radiance), side });

function fillMap(renderer: WebGLRenderer, fill: LampSetting): Texture {
  const surround = new Scene();
  surround.add(new Mesh(new SphereGeometry(20), glowing(WALL_RADIANCE)));
  for (const { centre, half, radiance } of fillSurround(fill)) {
    const box = new Mesh(new PlaneGeometry(2 * half[0], 2 * half[1]), glowing(radiance));
    box.position.set(...centre);
    // The plane's back is turned to the sitter.
    box.lookAt(centre[0] * 2, centre[1] * 2, centre[2] * 2);
    surround.add(box);
  }
  return new PMREMGenerator(renderer).fromScene(surround).texture;
}

/** The studio's parameters without the studio's shaders. */
export function stockWardrobe(
  renderer: WebGLRenderer,
  studio: Wardrobe,
  fill: LampSetting,
): Wardrobe {
  const envMap = fillMap(renderer, fill);
  const plain = (material: MeshPhysicalMaterial, envMapIntensity = 1) => {
    const copy = new MeshPhysicalMaterial().copy(material);
    return Object.assign(copy, { envMap, envMapIntensity });
  };
  const of = Object.fromEntries(
    Object.entries(studio.of).map(([name, material]) => [name, plain(material)]),
  ) as Record<Substance, MeshPhysicalMaterial>;
  return { of, room: plain(studio.room, ROOM_FILL), paper: plain(studio.paper, ROOM_FILL) };
}
