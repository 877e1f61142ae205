import { sculptureUrls } from '../../models/sculptures';
import { formatPercent } from '../../readings/format';
import { parseShare } from '../../readings/parse';
import { setLooks } from '../../session/actions';
import { known } from '../../session/known';
import { LIMITS } from '../../session/limits';
import { personLooks } from '../../session/person';
import type { LooksChanges, Person } from '../../session/types';
import { filesFor, formFile } from '../../sitter/files';
import {
  BEARDS,
  CLOTHES,
  type Colours,
  HAIR_STYLES,
  type Looks,
  type SitterModel,
} from '../../sitter/types';
import { ChoiceValue } from '../controls/ChoiceValue';
import { ColourValue } from '../controls/ColourValue';
import { TypedValue } from '../controls/TypedValue';
import { useWorkbench } from '../state/workbench';
import { panel } from '../words/panel.en';
import { nameOf, parseColour, SWATCHES } from './swatches';

/** Has everything been sculpted that a person with these looks needs? */
function isThere(model: SitterModel, looks: Looks): boolean {
  const { figure, worn, forms } = filesFor(model, looks);
  const files = [figure, ...worn, ...forms.map((form) => formFile(model.sculpture, form))];
  return files.every((file) => file in sculptureUrls);
}

/** Hair, face and clothes of a person as three sentences. */
export function PersonLooks({ person, who }: { person: Person; who: string | null }) {
  const { models, act } = useWorkbench();
  const model = known(models.sitters, person.model);
  const looks = personLooks(person, models);
  const set = (changes: LooksChanges) => act(setLooks, { person: person.id, looks: changes });
  const label = (name: string) => panel.labelOf(name, who);
  const offered = <T extends string>(all: readonly T[], put: (one: T) => Partial<Looks>) =>
    all.filter((one) => isThere(model, { ...looks, ...put(one) }));

  const colour = (part: keyof Colours) => {
    const value = looks.colours[part];
    const { name, exact } = nameOf(part, value);
    return (
      <ColourValue
        label={label(panel.parts[part])}
        shown={exact ? name : panel.near(name)}
        colour={value}
        swatches={SWATCHES[part]}
        typed={panel.typedColour}
        parse={parseColour}
        wrong={panel.notAColour}
        onChoose={(to) => set({ colours: { [part]: to } })}
      />
    );
  };
  return (
    <>
      <p>
        {panel.head({
          hair: (
            <ChoiceValue
              label={label(panel.labels.hair)}
              shown={panel.hair[looks.hair]}
              chosen={looks.hair}
              choices={offered(HAIR_STYLES, (hair) => ({ hair })).map((id) => ({
                id,
                name: panel.hair[id],
              }))}
              onChoose={(hair) => set({ hair })}
            />
          ),
          hairColour: colour('hair'),
          skin: colour('skin'),
          eyes: colour('eyes'),
        })}
      </p>
      <p>
        {panel.face({
          beard: (
            <ChoiceValue
              label={label(panel.labels.beard)}
              shown={panel.beards[looks.beard]}
              chosen={looks.beard}
              choices={offered(BEARDS, (beard) => ({ beard })).map((id) => ({
                id,
                name: panel.beards[id],
              }))}
              onChoose={(beard) => set({ beard })}
            />
          ),
          glasses: (
            <ChoiceValue
              label={label(panel.labels.glasses)}
              shown={looks.glasses ? panel.glasses.yes : panel.glasses.no}
              chosen={looks.glasses ? 'yes' : 'no'}
              choices={[
                { id: 'no', name: panel.glasses.no },
                { id: 'yes', name: panel.glasses.yes, note: panel.glassesNote },
              ]}
              onChoose={(id) => set({ glasses: id === 'yes' })}
            />
          ),
          smile: (
            <TypedValue
              label={label(panel.labels.smile)}
              shown={looks.smile === 0 ? panel.resting : panel.smiling(formatPercent(looks.smile))}
              initial={formatPercent(looks.smile)}
              parse={parseShare}
              range={LIMITS.smile}
              show={(share) => formatPercent(share)}
              note={panel.smileNote}
              offers={[0, 0.5, 1].map((value) => ({ value, shown: formatPercent(value) }))}
              onCommit={(smile) => set({ smile })}
            />
          ),
        })}
      </p>
      <p>
        {panel.wears(looks.clothes, {
          clothes: (
            <ChoiceValue
              label={label(panel.labels.clothes)}
              shown={panel.clothes[looks.clothes]}
              chosen={looks.clothes}
              choices={offered(CLOTHES, (clothes) => ({ clothes })).map((id) => ({
                id,
                name: panel.clothes[id],
              }))}
              onChoose={(clothes) => set({ clothes })}
            />
          ),
          top: colour('top'),
          outer: colour('outer'),
          trousers: colour('trousers'),
        })}
      </p>
    </>
  );
}
