import { bell, mix, type Point, step } from '../field';
import type { HeadShape } from '../head/shape';
import { chance, type PathPoint, RibbonBuilder, type RibbonLook, type Ribbons } from '../ribbons';
import { CAP_SLOPE, type Cap, wave } from './cap';
import { alongHairline, type Flow, follow, onSurface, ragged, spread } from './flow';
import { HAIR_CENTRE } from './hairline';

/** One root of hair, as the rules of a style see it. */
export interface Root {
  readonly at: Point;
  /** Distance inside the hairline, mm. */
  readonly q: number;
  /** Numbers in 0..1 of this root's own, one for each `draw`. */
  readonly chance: (draw: number) => number;
}

type Rule = (root: Root) => number;

/** How one kind of hair of a style grows; millimetres and radians. */
export interface Growth {
  readonly count: number;
  /** No hair grows where this is below 6. */
  readonly length: Rule;
  /** Height to which it falls, instead of a length. */
  readonly tip?: Rule;
  /** Height of the middle and the tip over what it lies on. */
  readonly rise: Rule;
  /** Further height of the tip. */
  readonly lift?: Rule;
  readonly width: Rule;
  /** Greatest angle to the flow, either side. */
  readonly stray: number;
  readonly steps: number;
  /** Shares of the way over which root and tip are ragged. */
  readonly ragged?: readonly [number, number];
  /** Bends at the tip by this angle. */
  readonly curl?: Rule;
  /** Lightness against the others. */
  readonly tone?: Rule;
}

/** No piece of a hair is longer, mm. */
const LONGEST_STEP = 62;

/** Degrees by which a hairline's roots stand out or back, at a share of its length; a sculptor's choice. */
const uneven = (share: number): number => 0.7 * wave(90 * share) + 0.5 * wave(230 * share);

/** Grows the hairs of one head. */
export class Groom {
  readonly builder = new RibbonBuilder();
  private readonly centre: Point;

  constructor(
    shape: HeadShape,
    private readonly scalp: Cap,
    private readonly flow: Flow,
    /** Where hair may be; one that strays elsewhere is not drawn. */
    private readonly allowed: (at: Point) => boolean = () => true,
  ) {
    const [, sy, sz] = shape.scale;
    this.centre = [0, HAIR_CENTRE[1] * sy, HAIR_CENTRE[2] * sz];
  }

  /** Sheets of many hairs all over the scalp; a third of them close behind the hairline. */
  sheets(growth: Growth): this {
    for (let i = 0; i < growth.count; i++) {
      const near = i % 3 === 0;
      // Close behind the hairline the skin must be covered soon.
      const direction = near
        ? this.scalp.direction(alongHairline(i, growth.count), 2 + 16 * chance(i, 15))
        : spread(i, -0.85);
      const root = this.root(i, direction);
      if (root.q < 1.5) continue;
      const [rootRagged, tipRagged] = growth.ragged ?? [0.4, 0.5];
      this.grow(root, growth, {
        narrow: 0.6,
        tone: mix(0.9, 1.08, root.chance(5)),
        sheer: ragged(near ? rootRagged / 2 : rootRagged, tipRagged),
        pitch: 0.3,
      });
    }
    return this;
  }

  /** Sheets of thin hairs along the hairline, ever fewer hairs towards the skin. */
  border(growth: Growth): this {
    for (let i = 0; i < growth.count; i++) {
      const share = alongHairline(i, growth.count);
      const raised = 15 * chance(i, 7) ** 1.4 - 2.4 * chance(i, 8) + uneven(share);
      const root = this.root(i, this.scalp.direction(share, raised));
      const within = step(-4, 12, root.q);
      const least = mix(0.86, 0.05, within) * mix(0.85, 1.1, root.chance(17));
      const ends = ragged(mix(0.6, 0.4, within), 0.6, mix(0.95, 0.5, within));
      this.grow(root, growth, {
        narrow: 0.7,
        tone: mix(0.9, 1.1, root.chance(14)),
        sheer: (t) => Math.max(least, ends(t)),
        pitch: 0.17,
      });
    }
    return this;
  }

  /** Fine short hairs before the hairline, which grow up and aside before they give in to the comb. */
  down(count: number): this {
    const { bed, direction } = this.scalp;
    for (let i = 0; i < count; i++) {
      const share = mix(0.27, 0.73, (i + chance(i, 20)) / count);
      const raised = 2.5 - 5 * chance(i, 21) ** 1.8 + uneven(share);
      const root = this.root(i, direction(share, raised));
      if (root.q > 3) continue;
      const aside = 1.6 * (chance(i, 22) - 0.5);
      const lift = mix(0.1, 1.2, chance(i, 24) ** 2);
      const path = follow(bed, CAP_SLOPE, this.flow, {
        root: root.at,
        length: mix(4, 20, chance(i, 23) ** 1.6),
        steps: 4,
        height: (t) => 0.1 + lift * t * t,
        stray: (t) => aside * (1 - 0.7 * t),
      });
      // A tuft of which one or two hairs are there: from afar a haze instead of dots.
      const width = mix(0.6, 1.1, chance(i, 25));
      const least = mix(0.6, 0.8, chance(i, 26));
      this.add(path, {
        width: (t) => width * (1 - 0.6 * t),
        shade: () => 1,
        sheer: (t) => mix(least, 1, t * t),
        hairs: Math.round(width / 0.16),
        over: lift / 3,
        roundness: 0,
      });
    }
    return this;
  }

  /** Single hairs that stand off the smooth outline. */
  flyaways(count: number, length = 60, height = 5): this {
    for (let i = 0; i < count; i++) {
      const root = this.root(i, spread(i * 5 + 2, -0.5));
      if (root.q < 12) continue;
      const lift = mix(0.8, height, chance(i, 31) ** 2.5);
      const path = follow(this.scalp.bed, CAP_SLOPE, this.flow, {
        root: root.at,
        length: mix(0.3 * length, length, chance(i, 30)),
        steps: 5,
        height: (t) => 0.4 + lift * Math.sin(Math.PI * t * mix(0.5, 1, chance(i, 33))),
        stray: () => 0.9 * (chance(i, 32) - 0.5),
      });
      this.add(path, {
        width: (t) => 0.12 * (1 - 0.7 * t),
        shade: () => 1.05,
        over: height,
        roundness: 0,
      });
    }
    return this;
  }

  build(): Ribbons {
    return this.builder.build();
  }

  /** Draws a hair unless it strays, or jumps from one fold of the surface to another. */
  private add(path: readonly PathPoint[], look: RibbonLook): void {
    const jumps = path.some(({ at }, i) => {
      const before = path[i - 1]?.at ?? at;
      return Math.hypot(at[0] - before[0], at[1] - before[1], at[2] - before[2]) > LONGEST_STEP;
    });
    if (!jumps && path.every(({ at }) => this.allowed(at))) this.builder.add(path, look);
  }

  private root(i: number, direction: Point): Root {
    const { at } = onSurface(this.scalp.bed, this.centre, direction);
    return { at, q: this.scalp.inside(...at), chance: (draw) => chance(i, draw) };
  }

  private grow(
    root: Root,
    growth: Growth,
    look: {
      readonly narrow: number;
      readonly tone: number;
      readonly sheer: (t: number) => number;
      /** Breadth of one hair with its gap, mm. */
      readonly pitch: number;
    },
  ): void {
    const length = growth.length(root);
    if (length < 6) return;
    const rise = growth.rise(root);
    const lift = growth.lift?.(root) ?? 0;
    const curl = growth.curl?.(root) ?? 0;
    const stray = 2 * growth.stray * (root.chance(3) - 0.5);
    const path = follow(this.scalp.bed, CAP_SLOPE, this.flow, {
      root: root.at,
      length,
      ...(growth.tip && { tip: growth.tip(root) }),
      steps: growth.steps,
      height: (t) => 0.12 + rise * step(0, 0.35, t) + 0.25 * bell(t - 0.5, 0.2) + lift * t * t,
      stray: (t) => stray + curl * t * t,
    });
    const full = growth.width(root);
    const tone = look.tone * (growth.tone?.(root) ?? 1);
    this.add(path, {
      width: (t) => full * mix(look.narrow, 1, step(0, 0.25, t)) * mix(1, 0.75, step(0.7, 1, t)),
      shade: (t) => tone * mix(0.88, 1, step(0, 0.3, t)),
      sheer: look.sheer,
      hairs: Math.max(2, Math.round(full / look.pitch)),
      over: rise + lift / 3,
      roundness: 0,
    });
  }
}
