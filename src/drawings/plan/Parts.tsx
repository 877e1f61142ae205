/** Parts that both drawings of the room share. */
import { type Box, chainPath, type Point, ringsPath } from '../geometry';
import type { PlacedLabel } from '../labels';
import { HATCH } from '../rail/ground';
import { type DimensionPlace, SLASH } from './dimension';
import type { Note } from './label-wishes';
import { type Ground, scaleBar, TEXT } from './sheet';
import type { TabPlace } from './tabs';
import type { PlanWords } from './words';

export const toneOf = (letters: readonly string[] | undefined): string =>
  letters?.length === 1 ? `tone tone-${(letters[0] ?? '').toLowerCase()}` : '';

/** Patterns are named by the drawing's own id. */
export function Patterns({ id }: { readonly id: string }) {
  return (
    <defs>
      <pattern
        id={`${id}wall`}
        width="6"
        height="6"
        patternUnits="userSpaceOnUse"
        patternTransform="rotate(45)"
      >
        <path className="plan-hatch" d="M0 0V6" />
      </pattern>
      <pattern id={`${id}kept`} width="4" height="4" patternUnits="userSpaceOnUse">
        <path className="plan-hatch plan-hatch-fine" d="M0 2H4" />
      </pattern>
    </defs>
  );
}

/** Walls with their hatching outside. */
export function Walls({ room: { x, y, width, height }, id }: { room: Box; id: string }) {
  const h = HATCH;
  return (
    <>
      <path
        fill={`url(#${id}wall)`}
        fillRule="evenodd"
        d={`M${x - h} ${y - h}h${width + 2 * h}v${height + 2 * h}h${-width - 2 * h}ZM${x} ${y}v${height}h${width}v${-height}Z`}
      />
      <rect className="plan-wall" x={x} y={y} width={width} height={height} />
    </>
  );
}

export function Dimensions({ places }: { readonly places: readonly DimensionPlace[] }) {
  return places.map(({ id, line, extensions, text, at, turn, size, letter, strong }) => {
    const slash = ({ x, y }: Point) => `M${x - SLASH} ${y + SLASH}l${2 * SLASH} ${-2 * SLASH}`;
    return (
      <g key={id} className={toneOf(letter && [letter])}>
        <path className="plan-extension" d={extensions.map((e) => chainPath(e)).join('')} />
        <path className="plan-dimension" d={chainPath(line) + line.map(slash).join('')} />
        <text
          className={`plan-figure-text ${toneOf(letter && [letter])}`}
          transform={`translate(${at.x} ${at.y}) rotate(${turn})`}
          y={0.35 * size}
          fontSize={size}
          fontWeight={strong ? TEXT.bold : undefined}
          textAnchor="middle"
        >
          {text}
        </text>
      </g>
    );
  });
}

export function Labels({ labels, rem }: { labels: readonly PlacedLabel[]; rem: number }) {
  const lineHeight = 1.25 * TEXT.note * rem;
  return labels.map(({ id, box, lines, align, letters }) => {
    const x = box.x + { left: 0, middle: box.width / 2, right: box.width }[align];
    const anchor = ({ left: 'start', middle: 'middle', right: 'end' } as const)[align];
    return (
      <text
        key={id}
        className={`plan-text ${toneOf(letters)}`}
        fontSize={TEXT.note * rem}
        textAnchor={anchor}
      >
        {lines.map((text, i) => (
          <tspan key={text} x={x} y={box.y + (i + 0.78) * lineHeight}>
            {text}
          </tspan>
        ))}
      </text>
    );
  });
}

/** A letter on its tab, pointing at its camera. */
export function Tab({ place: { letter, tab, wedge }, rem }: { place: TabPlace; rem: number }) {
  return (
    <>
      <path className="plan-tab" d={ringsPath([wedge])} />
      <rect className="plan-tab" {...tab} />
      <text
        className="plan-letter"
        x={tab.x + tab.width / 2}
        y={tab.y + tab.height / 2 + 0.36 * TEXT.letter * rem}
        fontSize={TEXT.letter * rem}
        textAnchor="middle"
      >
        {letter}
      </text>
    </>
  );
}

interface FootProps {
  readonly ground: Ground;
  readonly imperial: boolean;
  readonly words: PlanWords;
}

/** Scale bar, and the scale at which the drawing prints. */
export function Foot({ ground: g, imperial, words }: FootProps) {
  const { parts, texts } = scaleBar(g, imperial);
  const [a, b, c] = parts;
  if (!a || !b || !c) return null;
  const size = TEXT.note * g.rem;
  const says = g.printed === null ? words.prints(g.prints) : words.drawnAt(g.printed);
  return (
    <g>
      <path className="plan-bar" d={`M${a.x} ${a.y}H${c.x}`} />
      <path className="plan-bar" d={parts.map(({ x, y }) => `M${x} ${y}v-6`).join('')} />
      <rect className="plan-bar-full" x={a.x} y={a.y - 4} width={b.x - a.x} height={4} />
      {parts.map(({ x, y }, i) => (
        <text
          key={texts[i]}
          className="plan-figure-text"
          x={x}
          y={y + 1.25 * size}
          fontSize={size}
          textAnchor={i === 0 ? 'start' : 'middle'}
        >
          {texts[i]}
        </text>
      ))}
      <text
        className="plan-soft"
        x={g.room.x + g.room.width}
        y={a.y + 1.25 * size}
        fontSize={size}
        textAnchor="end"
      >
        {says}
      </text>
    </g>
  );
}

/** What found no place in the drawing. */
export function Notes({ notes }: { readonly notes: readonly Note[] }) {
  if (notes.length === 0) return null;
  return (
    <p className="plan-note">
      {notes.map(({ id, text, letters }, i) => (
        <span key={id} className={toneOf(letters)}>
          {i === 0 ? `${text.charAt(0).toUpperCase()}${text.slice(1)}` : text}
          {/[.!?]$/.test(text) ? ' ' : i < notes.length - 1 ? '; ' : '.'}
        </span>
      ))}
    </p>
  );
}
