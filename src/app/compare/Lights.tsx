import { formatPercent } from '../../readings/format';
import { parseShare } from '../../readings/parse';
import { resetLight, setLight } from '../../session/actions';
import { LAMPS, type LampName, softnessOf } from '../../session/light';
import { LIMITS } from '../../session/limits';
import { AngleValue, showAngle } from '../controls/AngleValue';
import { TypedValue } from '../controls/TypedValue';
import { Do } from '../controls/words';
import { useWorkbench } from '../state/workbench';
import { light as said } from '../words/light.en';

const size = (angle: number) => showAngle(Math.abs(angle));

/** One light: where it stands, how soft and how strong it is. */
export function LampSentence({ lamp }: { lamp: LampName }) {
  const { session, act } = useWorkbench();
  const setting = session.light[lamp];
  const { azimuth, elevation, strength } = setting;
  const softness = softnessOf(setting);
  const own = said.lamps[lamp];
  const strengthValue = (
    <TypedValue
      label={own.labels.strength}
      shown={said.strength(strength, formatPercent(strength))}
      initial={formatPercent(strength)}
      parse={parseShare}
      range={LIMITS.lightStrength}
      show={(share) => formatPercent(share)}
      offers={[0, 0.5, 1, 1.5].map((value) => ({
        value,
        shown: said.strength(value, formatPercent(value)),
      }))}
      note={own.caution}
      onCommit={(to) => act(setLight, { lamp, strength: to })}
    />
  );
  if (strength === 0) return <p>{own.off(strengthValue)}</p>;
  return (
    <p>
      {own.on({
        azimuth: (
          <AngleValue
            label={own.labels.azimuth}
            radians={azimuth}
            shown={said.azimuth(azimuth, size(azimuth))}
            range={LIMITS.lightAzimuth}
            note={own.caution}
            onCommit={(to) => act(setLight, { lamp, azimuth: to })}
          />
        ),
        elevation: (
          <AngleValue
            label={own.labels.elevation}
            radians={elevation}
            shown={said.elevation(elevation, size(elevation))}
            range={LIMITS.lightElevation}
            note={own.caution}
            onCommit={(to) => act(setLight, { lamp, elevation: to })}
          />
        ),
        softness: (
          <TypedValue
            label={own.labels.softness}
            shown={said.soft(softness)}
            initial={formatPercent(softness)}
            parse={parseShare}
            range={LIMITS.lightSoftness}
            show={(share) => formatPercent(share)}
            note={said.softNote}
            offers={[0.08, 0.25, 0.5, 1].map((value) => ({ value, shown: said.soft(value) }))}
            onCommit={(to) => act(setLight, { lamp, size: to * setting.distance })}
          />
        ),
        strength: strengthValue,
      })}
    </p>
  );
}

/** The studio's four lights, a sentence each, and what to mind about them. */
export function Lights() {
  const { act } = useWorkbench();
  return (
    <>
      {LAMPS.map((lamp) => (
        <LampSentence key={lamp} lamp={lamp} />
      ))}
      <p className="slip-note">{said.caution}</p>
      <Do onPress={() => act(resetLight, {})}>{said.usual}</Do>
    </>
  );
}
