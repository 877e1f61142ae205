/** The companies' figures in the scene; one company is seen at a time. */
import { Group, Mesh, type Object3D, type Scene } from 'three';
import { isRibbons } from '../sitter/ribbons';
import type { LandmarkName, SitterMesh, Substance } from '../sitter/types';
import { type Company, isShading, type PlacedSitter } from './company';
import type { Detail } from './detail';
import { hold, type Levels, letGo } from './geometries';
import { landmarkPoints } from './landmarkPoints';
import { LAYER } from './layers';
import type { Materials } from './materials';

/** Layers of what is not on the sitter's own. */
const LAYERS: Readonly<Partial<Record<Substance, number>>> = {
  glass: LAYER.glass,
  hair: LAYER.hair,
  brows: LAYER.hair,
};

interface Part {
  readonly object: Mesh;
  readonly levels: Levels;
}

/** Hair that lies over its own mass. */
const isLocks = (mesh: SitterMesh): boolean => mesh.substance === 'hair' && isRibbons(mesh);

/** Hairs are drawn after all that they may lie over: first their mass, with brows and lashes, then the locks. */
function turnOf(mesh: SitterMesh): number {
  if (isLocks(mesh)) return 2;
  return LAYERS[mesh.substance] === LAYER.hair ? 1 : 0;
}

/** One company's objects. */
class Figure {
  readonly group = new Group();
  private readonly parts: Part[] = [];
  private readonly own: { dispose(): void }[] = [];

  constructor(
    private readonly company: Company,
    materials: Materials,
    landmarks: ReadonlySet<LandmarkName>,
  ) {
    this.group.visible = false;
    for (const one of company.sitters) this.group.add(this.sitter(one, materials, landmarks));
  }

  private sitter(
    { sitter, at, turn = 0 }: PlacedSitter,
    materials: Materials,
    landmarks: ReadonlySet<LandmarkName>,
  ): Object3D {
    const group = new Group();
    group.position.set(...at);
    group.rotation.y = turn;
    const parts = sitter.meshes.map((mesh): Part => {
      const levels = hold(mesh);
      const material = isLocks(mesh) ? materials.locks : materials.of[mesh.substance];
      const object = new Mesh(levels.fine, material);
      object.layers.set(LAYERS[mesh.substance] ?? LAYER.sitter);
      object.renderOrder = turnOf(mesh);
      object.castShadow = isShading(mesh);
      object.receiveShadow = true;
      object.frustumCulled = false;
      return { object, levels };
    });
    this.parts.push(...parts);
    for (const { object } of parts) group.add(object);
    if (landmarks.size > 0) {
      const fine = parts.map(({ levels }) => levels.fine);
      const points = landmarkPoints(sitter, fine, landmarks);
      for (const object of points) {
        group.add(object);
        this.own.push(object.geometry, object.material);
      }
    }
    return group;
  }

  setDetail(detail: Detail): void {
    for (const { object, levels } of this.parts) object.geometry = levels[detail];
  }

  dispose(): void {
    this.group.removeFromParent();
    for (const each of this.own) each.dispose();
    const meshes: SitterMesh[] = this.company.sitters.flatMap(({ sitter }) => [...sitter.meshes]);
    for (const mesh of meshes) letGo(mesh);
  }
}

export class Figures {
  private readonly known = new Map<Company, Figure>();

  constructor(
    private readonly scene: Scene,
    private readonly materials: Materials,
    private readonly landmarks: ReadonlySet<LandmarkName>,
  ) {}

  /** Makes one company the one that is seen. */
  show(company: Company, detail: Detail): void {
    for (const [other, figure] of this.known) figure.group.visible = other === company;
    const figure = this.known.get(company) ?? this.make(company);
    figure.group.visible = true;
    figure.setDetail(detail);
  }

  /** Lets every other company go. Geometries that a kept one shares stay. */
  keep(companies: readonly Company[]): void {
    for (const company of companies) if (!this.known.has(company)) this.make(company);
    for (const [company, figure] of this.known) {
      if (companies.includes(company)) continue;
      figure.dispose();
      this.known.delete(company);
    }
  }

  private make(company: Company): Figure {
    const figure = new Figure(company, this.materials, this.landmarks);
    this.scene.add(figure.group);
    this.known.set(company, figure);
    return figure;
  }

  dispose(): void {
    this.keep([]);
  }
}
