/** Who stands in a picture: one sitter or several, each at its place. */
import type { Vec3 } from '../optics/types';
import { floorOf } from '../session/cast';
import { isRibbons } from '../sitter/ribbons';
import type { Sitter, SitterMesh } from '../sitter/types';
import { type Bounds, boundsOf } from './depthRange';

export interface PlacedSitter {
  readonly sitter: Sitter;
  /** Where the midpoint between its pupils is, metres, the picture's frame. */
  readonly at: Vec3;
  /** About the vertical through that point, radians, positive to the sitter's left. */
  readonly turn?: number;
}

/** The sitters of a picture with what the stage asks of them. Equal sitters are one company. */
export interface Company {
  readonly sitters: readonly PlacedSitter[];
  readonly bounds: Bounds;
  /** Height of the floor, metres; it is the first sitter's. */
  readonly floor: number;
  /** Equal for companies that cast the same shadows. */
  readonly shades: string;
}

export const alone = (sitter: Sitter): readonly PlacedSitter[] => [{ sitter, at: [0, 0, 0] }];

/** Ribbons of hairs and eyes cast no shadow: too thin for a shadow map, or deep between the lids. */
export const isShading = (mesh: SitterMesh): boolean =>
  !isRibbons(mesh) && mesh.substance !== 'eye' && mesh.substance !== 'glass';

const samePlace = (a: PlacedSitter, b: PlacedSitter): boolean =>
  a.sitter === b.sitter &&
  (a.turn ?? 0) === (b.turn ?? 0) &&
  a.at.every((value, i) => value === b.at[i]);

export const sameSitters = (a: readonly PlacedSitter[], b: readonly PlacedSitter[]): boolean =>
  a === b || (a.length === b.length && a.every((placed, i) => samePlace(placed, b[i] as never)));

const boundsOfMesh = new WeakMap<SitterMesh, Bounds>();

function meshBounds(mesh: SitterMesh): Bounds {
  const known = boundsOfMesh.get(mesh);
  if (known) return known;
  const fresh = boundsOf([mesh.positions]);
  boundsOfMesh.set(mesh, fresh);
  return fresh;
}

const corner = ({ min, max }: Bounds, i: number): Vec3 => [
  (i & 1 ? max : min)[0],
  (i & 2 ? max : min)[1],
  (i & 4 ? max : min)[2],
];

/** Turns a point of a sitter's frame into the picture's. */
export function placed(point: Vec3, { at, turn = 0 }: Omit<PlacedSitter, 'sitter'>): Vec3 {
  const [cosine, sine] = [Math.cos(turn), Math.sin(turn)];
  return [
    at[0] + cosine * point[0] + sine * point[2],
    at[1] + point[1],
    at[2] + cosine * point[2] - sine * point[0],
  ];
}

const union = (boxes: readonly Bounds[]): Bounds =>
  boundsOf(boxes.map(({ min, max }) => Float32Array.of(...min, ...max)));

const sitterBounds = ({ meshes }: Sitter): Bounds => union(meshes.map(meshBounds));

const numbers = new WeakMap<SitterMesh, number>();
let count = 0;
function numberOf(mesh: SitterMesh): number {
  const known = numbers.get(mesh);
  if (known !== undefined) return known;
  count += 1;
  numbers.set(mesh, count);
  return count;
}

/** @throws RangeError when there is nobody. */
export function companyOf(sitters: readonly PlacedSitter[]): Company {
  const [first] = sitters;
  if (!first) throw new RangeError('a picture needs a sitter');
  const boxes = sitters.map((one) => {
    const box = sitterBounds(one.sitter);
    const corners = Array.from({ length: 8 }, (_, i) => placed(corner(box, i), one));
    return boundsOf([Float32Array.from(corners.flat())]);
  });
  const floor = first.at[1] + floorOf(first.sitter);
  const shades = sitters.map(({ sitter, at, turn = 0 }) => [
    ...sitter.meshes.filter(isShading).map(numberOf),
    ...at,
    turn,
  ]);
  return { sitters, bounds: union(boxes), floor, shades: JSON.stringify([shades, floor]) };
}

/** As many as can hang side by side: a clip of so many pictures keeps what its frames have in common. */
const GUESTS = 4;

/**
 * Each list's company, the same object for equal lists, now and from one call to the next. Those on the
 * wall are present, and beside them the last few guests, who came for a picture that hangs nowhere.
 */
export class Companies {
  private hung: readonly Company[] = [];
  private guests: readonly Company[] = [];

  /** The companies of all that hangs now. Guests go once others hang. */
  of(lists: readonly (readonly PlacedSitter[])[]): readonly Company[] {
    const now: Company[] = [];
    const found = lists.map((list) => {
      const company = among(now, list) ?? among(this.present, list) ?? companyOf(list);
      if (!now.includes(company)) now.push(company);
      return company;
    });
    if (now.some((company, i) => company !== this.hung[i])) this.guests = [];
    this.hung = now;
    return found;
  }

  /** The company of a list for a picture of its own. */
  invite(list: readonly PlacedSitter[]): Company {
    const hanging = among(this.hung, list);
    if (hanging) return hanging;
    const guest = among(this.guests, list) ?? companyOf(list);
    this.guests = [guest, ...this.guests.filter((other) => other !== guest)].slice(0, GUESTS);
    return guest;
  }

  /** All whose figures are of use. */
  get present(): readonly Company[] {
    return [...this.hung, ...this.guests];
  }
}

const among = (companies: readonly Company[], list: readonly PlacedSitter[]): Company | undefined =>
  companies.find(({ sitters }) => sameSitters(sitters, list));
