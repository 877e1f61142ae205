import { standFaults, stopsAcross, stopsToBackdrop } from '../../plan/lights';
import type { PlanRequest } from '../../plan/types';
import { formatStops } from '../../readings/format';
import { setLight } from '../../session/actions/plan-page';
import { type LampName, lampPlace, STANDS } from '../../session/light';
import { LIMITS } from '../../session/limits';
import { shownWanted } from '../../session/plan-shown';
import { LampSentence } from '../compare/Lights';
import type { Shown } from '../compare/shown';
import { AngleValue, showAngle } from '../controls/AngleValue';
import { LengthValue } from '../controls/LengthValue';
import { useWorkbench } from '../state/workbench';
import { light } from '../words/light.en';
import { stands as said } from '../words/stands.en';
import { standsIn } from './standsIn';

const size = (angle: number) => showAngle(Math.abs(angle));

/** One stand: where it is, how large its box, and what that does. */
function Stand(props: { lamp: LampName; pictures: readonly Shown[]; request: PlanRequest }) {
  const { session, act } = useWorkbench();
  const { lamp, request } = props;
  const setting = session.light[lamp];
  const { name, labels, caution } = light.lamps[lamp];
  if (setting.strength === 0) return <p>{said.off(name)}</p>;
  const wanted = shownWanted(session, request);
  const room = wanted?.room ?? request.room;
  const { x, y, z } = lampPlace(setting);
  const stand = { at: [x, y, z] as const, size: setting.size };
  const back = stopsToBackdrop(stand, room);
  const across =
    wanted && wanted.people.length > 1
      ? stopsAcross(
          stand,
          wanted.people.map(({ eyes }) => eyes),
        )
      : null;
  const { inPicture, shadedBy } = standsIn(stand, props.pictures, room);
  return (
    <p>
      {said.stand({
        name,
        azimuth: (
          <AngleValue
            label={labels.azimuth}
            radians={setting.azimuth}
            shown={light.azimuth(setting.azimuth, size(setting.azimuth))}
            range={LIMITS.lightAzimuth}
            note={caution}
            onCommit={(azimuth) => act(setLight, { lamp, azimuth })}
          />
        ),
        elevation: (
          <AngleValue
            label={labels.elevation}
            radians={setting.elevation}
            shown={light.elevation(setting.elevation, size(setting.elevation))}
            range={LIMITS.lightElevation}
            note={caution}
            onCommit={(elevation) => act(setLight, { lamp, elevation })}
          />
        ),
        distance: (
          <LengthValue
            label={said.distanceOf(name)}
            metres={setting.distance}
            range={LIMITS.lightDistance}
            note={said.note}
            onCommit={(distance) => act(setLight, { lamp, distance })}
          />
        ),
        size: (
          <LengthValue
            label={said.sizeOf(name)}
            metres={setting.size}
            range={LIMITS.lightSize}
            offers={[0.3, 0.6, 0.9, 1.2]}
            onCommit={(to) => act(setLight, { lamp, size: to })}
          />
        ),
      })}{' '}
      {back.ok && said.toBackdrop(formatStops(Math.abs(back.value)), back.value < 0)}{' '}
      {across?.ok && `${said.across(formatStops(across.value))} `}
      {inPicture.length > 0 && <b>{said.inPicture(inPicture.join(', '))} </b>}
      {shadedBy.length > 0 && <b>{said.shaded(shadedBy.join(', '))} </b>}
      {standFaults(stand, room).map((fault) => (
        <b key={fault}>{said.faults[fault]} </b>
      ))}
    </p>
  );
}

/** Key, fill and hair light as stands in the room, and the background light by where its pool falls. */
export default function LightStands(props: { pictures: readonly Shown[]; request: PlanRequest }) {
  const { session } = useWorkbench();
  return (
    <div className="setup-more">
      {STANDS.map((lamp) => (
        <Stand key={lamp} lamp={lamp} {...props} />
      ))}
      <LampSentence lamp="background" />
      {session.light.background.strength > 0 && <p className="slip-note">{said.hung}</p>}
      <p className="slip-note">{light.caution}</p>
    </div>
  );
}
