import { setCompany } from '../../session/actions';
import type { Company, Picture } from '../../session/types';
import { peopleNames } from '../compare/shown';
import { ChoiceValue } from '../controls/ChoiceValue';
import { useWorkbench } from '../state/workbench';
import { panel } from '../words/panel.en';

const CHOICES = ['1', '2', '1 2', '2 1'] as const;
type Chosen = (typeof CHOICES)[number];
const companyOf = (chosen: Chosen): Company => chosen.split(' ') as unknown as Company;

/** Who is in a picture, while the session has two people. */
export function CompanyValue({ picture: { letter, of } }: { picture: Picture }) {
  const { session, models, act } = useWorkbench();
  const { the } = peopleNames(session, models);
  const words = (company: Company): string => {
    const [first, second] = company.map(the);
    if (first === undefined) return '';
    return second === undefined ? first : panel.company.both(first, second);
  };
  return (
    <ChoiceValue
      label={panel.company.label(letter)}
      shown={words(of)}
      chosen={of.join(' ') as Chosen}
      choices={CHOICES.map((id) => {
        const company = companyOf(id);
        const note = company.length > 1 ? panel.company.note(the(company[0])) : undefined;
        return { id, name: words(company), note };
      })}
      onChoose={(id) => act(setCompany, { letter, of: companyOf(id) })}
    />
  );
}
