import { AGE_FORMS, type FormName, type Looks, type SitterModel } from './types';

/** Names of the files of models/sculpture/ that one person needs. */
export interface FileNames {
  readonly figure: string;
  /** Hair, beard and clothes. */
  readonly worn: readonly string[];
  readonly forms: readonly FormName[];
}

const file = (...parts: readonly string[]): string => `${parts.join('-')}.glb`;

/** The file of a form of a sculpture. */
export const formFile = (sculpture: SitterModel['sculpture'], form: FormName): string =>
  file(sculpture, 'form', form);

/** Which files make a person of this model and these looks. */
export function filesFor(
  { sculpture, forms }: Pick<SitterModel, 'sculpture' | 'forms'>,
  looks: Looks,
): FileNames {
  return {
    figure: file(sculpture),
    worn: [
      file(sculpture, 'clothes', looks.clothes),
      ...(looks.hair === 'bald' ? [] : [file(sculpture, 'hair', looks.hair)]),
      ...(looks.beard === 'none' ? [] : [file(sculpture, 'beard', looks.beard)]),
    ],
    forms: [
      ...AGE_FORMS.filter((name) => (forms[name] ?? 0) > 0),
      ...(looks.smile > 0 ? (['smile'] as const) : []),
    ],
  };
}
