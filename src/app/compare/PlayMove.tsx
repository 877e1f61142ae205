import { Slider, SliderThumb, SliderTrack } from 'react-aria-components';
import { formatNumber } from '../../readings/format';
import { LIMITS } from '../../session/limits';
import type { Letter, Session } from '../../session/types';
import { ChoiceValue } from '../controls/ChoiceValue';
import { TypedValue } from '../controls/TypedValue';
import { Do } from '../controls/words';
import { useMedia } from '../state/useMedia';
import type { Play } from '../state/usePlay';
import { words } from '../words';

/** Plays, pauses and scrubs the move between two standpoints. */
export function PlayMove(props: {
  play: Play;
  move: Session['play'];
  letters: readonly Letter[];
  onChange: (move: Partial<Session['play']>) => void;
}) {
  const { play, move } = props;
  const reduced = useMedia('(prefers-reduced-motion: reduce)');
  const said = words.rail;
  return (
    <span className="play">
      {reduced ? (
        <Do onPress={play.step}>{said.step}</Do>
      ) : (
        <Do onPress={play.playing ? play.pause : play.start}>
          {play.playing ? said.pause : said.play(move.from, move.to)}
        </Do>
      )}
      <Slider
        aria-label={said.at}
        minValue={0}
        maxValue={100}
        step={1}
        value={Math.round(100 * (play.at ?? 0))}
        onChange={(value) => play.scrub(value / 100)}
        formatOptions={{ maximumFractionDigits: 0 }}
      >
        <SliderTrack className="play-track">
          <SliderThumb className="play-thumb" />
        </SliderTrack>
      </Slider>
      <TypedValue
        label={said.seconds}
        shown={said.shownSeconds(
          formatNumber(move.seconds, Number.isInteger(move.seconds) ? 0 : 1),
        )}
        initial={String(move.seconds)}
        parse={(text) => {
          const value = Number(text.replace(',', '.').replace(/s$/, '').trim());
          return Number.isFinite(value)
            ? { ok: true, value }
            : { ok: false, why: said.secondsWrong };
        }}
        range={LIMITS.playSeconds}
        onCommit={(seconds) => props.onChange({ seconds })}
      />
      {props.letters.length > 2 && (
        <ChoiceValue
          label={said.ends}
          shown={said.from(move.from, move.to)}
          chosen={`${move.from}${move.to}`}
          choices={props.letters.flatMap((from) =>
            props.letters
              .filter((to) => to !== from)
              .map((to) => ({ id: `${from}${to}`, name: said.from(from, to) })),
          )}
          onChoose={(ends) => props.onChange({ from: ends[0] as Letter, to: ends[1] as Letter })}
        />
      )}
      {play.at !== null && !play.playing && (
        <Do onPress={() => play.scrub(null)}>{said.putBack}</Do>
      )}
    </span>
  );
}
