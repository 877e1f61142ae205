/** The room from above, to scale. One unit of the drawing is one CSS pixel; printed, it is in millimetres. */
import '../tones.css';
import './plan.css';
import { useId, useMemo, useRef } from 'react';
import { PERSONAL_DISTANCES } from '../../readings/proxemics';
import { chainPath, type Point, ringsPath } from '../geometry';
import { useTextWidth } from '../text-width';
import { type AboveLayout, type LightAbove, layoutAbove } from './above';
import { arcEnds } from './above-labels';
import { type DrawingProps, DrawingSheet, GripOf } from './DrawingSheet';
import { doorSwing } from './door';
import { Dimensions, Foot, Labels, Patterns, Tab, toneOf, Walls } from './Parts';
import type { PlanContent } from './types';
import { PLAN_WORDS } from './words';

export function FromAbove(props: DrawingProps) {
  const { content, width, rem, maxHeight, printScale, words = PLAN_WORDS } = props;
  const drawing = useRef<SVGSVGElement>(null);
  const measure = useTextWidth(drawing);
  const id = useId();
  const layout = useMemo(
    () => layoutAbove(content, { width, rem, maxHeight, printScale, measure }, words),
    [content, width, rem, maxHeight, printScale, measure, words],
  );
  const { ground, cameras, dimensions, labels, tabs, grips, notes } = layout;
  const units = content.units;
  const still = printScale !== undefined;
  const grip = { grips, units, actions: props, still };
  return (
    <DrawingSheet drawing={drawing} ground={ground} label={words.above} notes={notes}>
      {/* biome-ignore lint/a11y/noAriaHiddenOnFocusable: nothing in this part takes the focus */}
      <g aria-hidden="true">
        <Patterns id={id} />
        <Walls room={ground.room} id={id} />
        <Ground layout={layout} content={content} id={id} />
        {cameras.map(({ picture: { letter }, sharp }) =>
          sharp && (content.chosen ?? letter) === letter ? (
            <path key={letter} className="plan-sharp" d={ringsPath([sharp])} />
          ) : null,
        )}
        <path className="plan-axis" d={chainPath(layout.axis)} />
      </g>
      <GripOf {...grip} id="backdrop">
        <path className="plan-backdrop" d={chainPath(layout.backdrop)} />
      </GripOf>
      {content.room.obstacles.map((thing) => (
        <GripOf key={thing.id} {...grip} id={`obstacle-${thing.id}`}>
          <Thing layout={layout} thing={thing} room={content.room} />
        </GripOf>
      ))}
      <GripOf {...grip} id="sitter">
        {layout.people.map(({ id: person, shoulders, head, nose }) => (
          <g key={person}>
            <path className="plan-body" d={ringsPath([shoulders])} />
            <path className="plan-nose" d={ringsPath([nose])} />
            <path className="plan-head" d={ringsPath([head])} />
          </g>
        ))}
      </GripOf>
      {/* biome-ignore lint/a11y/noAriaHiddenOnFocusable: nothing in this part takes the focus */}
      <g aria-hidden="true" pointerEvents="none">
        {cameras.map(({ picture: { letter }, sight, field, used, arc, radius }, i) => (
          <g key={letter} className={toneOf([letter])}>
            <path className="plan-sight" d={sight.map((line) => chainPath(line)).join('')} />
            <path
              className="plan-angle"
              d={`M${arc[0].x} ${arc[0].y}A${radius} ${radius} 0 0 1 ${arc[1].x} ${arc[1].y}`}
            />
            <path className="plan-field" d={chainPath(field)} />
            <path
              className="plan-used"
              d={chainPath(used)}
              transform={`translate(${(4 + 3 * i) * ground.along.x} ${(4 + 3 * i) * ground.along.y})`}
            />
          </g>
        ))}
        <circle className="plan-eyes" cx={layout.eyes.x} cy={layout.eyes.y} r={0.12 * rem} />
        {layout.focus.map(({ distance, letters, path }) => (
          <path key={distance} className={`plan-focus ${toneOf(letters)}`} d={chainPath(path)} />
        ))}
      </g>
      {layout.lights.map((light) => (
        <GripOf key={light.light.id} {...grip} id={`light-${light.light.id}`}>
          <g clipPath={`url(#${id}room)`}>
            <Lamp {...light} />
          </g>
        </GripOf>
      ))}
      {tabs.map((place) => {
        const { letter } = place;
        const camera = cameras.find(({ picture }) => picture.letter === letter);
        return (
          <GripOf key={letter} {...grip} id={`camera-${letter}`} className={toneOf([letter])}>
            {camera && (
              <>
                <path className="plan-camera" d={ringsPath([camera.body])} />
                <path className="plan-sensor" d={chainPath(camera.sensor)} />
              </>
            )}
            <circle className="plan-pupil" cx={place.pupil.x} cy={place.pupil.y} r={0.28 * rem} />
            <Tab place={place} rem={rem} />
          </GripOf>
        );
      })}
      {/* biome-ignore lint/a11y/noAriaHiddenOnFocusable: nothing in this part takes the focus */}
      <g aria-hidden="true" pointerEvents="none">
        <Dimensions places={dimensions} />
        <Labels labels={labels} rem={rem} />
        <Foot ground={ground} imperial={units === 'imperial'} words={words} />
      </g>
    </DrawingSheet>
  );
}

interface GroundProps {
  readonly layout: AboveLayout;
  readonly content: PlanContent;
  readonly id: string;
}

/** The photographer's space and the bands of personal distance, cut to the room. */
function Ground({ layout: { ground, kept, eyes }, content, id }: GroundProps) {
  const bands = PERSONAL_DISTANCES.filter(
    ({ upTo }) => Number.isFinite(upTo) && upTo < ground.floor.leaves,
  );
  return (
    <>
      <clipPath id={`${id}room`}>
        <rect {...ground.room} />
      </clipPath>
      {kept.length > 2 && (
        <path className="plan-kept" d={ringsPath([kept])} fill={`url(#${id}kept)`} />
      )}
      <g clipPath={`url(#${id}room)`}>
        {bands.map(({ band, upTo }) => {
          const [left, right] = arcEnds(ground, upTo);
          const r = upTo * ground.pxPerMetre;
          return (
            <path
              key={band}
              className="plan-band"
              d={`M${left.x} ${left.y}A${r} ${r} 0 0 1 ${right.x} ${right.y}`}
            />
          );
        })}
        {content.lights
          .filter(({ shadedBy }) => shadedBy.length > 0)
          .map(({ id: light, x, y }) => (
            <path key={light} className="plan-shaded" d={chainPath([ground.place([x, y]), eyes])} />
          ))}
      </g>
    </>
  );
}

interface ThingProps {
  readonly layout: AboveLayout;
  readonly thing: PlanContent['room']['obstacles'][number];
  readonly room: PlanContent['room'];
}

function Thing({ layout: { ground }, thing, room }: ThingProps) {
  const corner = ground.place([thing.x, thing.y + thing.width]);
  const width = thing.length * ground.pxPerMetre;
  const height = thing.width * ground.pxPerMetre;
  if (thing.kind === 'thing') {
    return <rect className="plan-thing" {...corner} width={width} height={height} />;
  }
  const swing = doorSwing(thing, room);
  const [hinge, open, shut] = [swing.hinge, swing.open, swing.shut].map(ground.place) as [
    Point,
    Point,
    Point,
  ];
  const rx = Math.abs(open.x - hinge.x) || Math.abs(shut.x - hinge.x);
  const ry = Math.abs(open.y - hinge.y) || Math.abs(shut.y - hinge.y);
  const turn = (open.x - hinge.x) * (shut.y - hinge.y) - (open.y - hinge.y) * (shut.x - hinge.x);
  return (
    <>
      <path className="plan-doorway" d={chainPath([hinge, shut])} />
      <path
        className="plan-door"
        d={`${chainPath([hinge, open])}A${rx} ${ry} 0 0 ${turn > 0 ? 1 : 0} ${shut.x} ${shut.y}`}
      />
    </>
  );
}

/** A stand with its soft box; struck through where a picture sees it. */
function Lamp({ light, box, front, stand }: LightAbove) {
  const [a, b, c, d] = box;
  return (
    <>
      <circle className="plan-stand" cx={stand.x} cy={stand.y} r={4} />
      <path className="plan-lamp" d={ringsPath([box])} />
      {light.inPicture.length > 0 && a && b && c && d && (
        <path className="plan-struck" d={`${chainPath([a, c])}${chainPath([b, d])}`} />
      )}
      <path className="plan-lamp-front" d={chainPath(front)} />
    </>
  );
}
