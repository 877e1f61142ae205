import { useState } from 'react';
import { FileTrigger, Input, Label, TextArea, TextField } from 'react-aria-components';
import { setAuthor } from '../../session/actions/handout-page';
import { LOGO_LENGTH } from '../../session/limits';
import { Do } from '../controls/words';
import { dataAddress } from '../state/dataAddress';
import { useWorkbench } from '../state/workbench';
import { words } from '../words';
import { handout as said } from '../words/handout.en';

const LOGO_TYPES = ['image/png', 'image/jpeg'];

/** Why a file is no logo, or null: it is drawn once to see whether it is a picture. */
async function whyNoLogo(file: File, address: string): Promise<string | null> {
  if (!LOGO_TYPES.includes(file.type)) return said.logoWrong;
  if (address.length > LOGO_LENGTH) return said.logoLarge;
  const image = new Image();
  image.src = address;
  return image.decode().then(
    () => null,
    () => said.logoWrong,
  );
}

/** Who hands it out: a name, words and a logo. What is typed is one step that undo takes back. */
export function Author({ close }: { close: () => void }) {
  const { session, act } = useWorkbench();
  const { author } = session.handout;
  const [name, setName] = useState(author.name);
  const [text, setText] = useState(author.words);
  const [wrong, setWrong] = useState<string | null>(null);
  const keep = () => {
    if (name !== author.name || text !== author.words) act(setAuthor, { name, words: text });
  };
  const choose = async (files: FileList | null) => {
    const file = files?.[0];
    if (!file) return;
    const address = await dataAddress(file).catch(() => '');
    const why = await whyNoLogo(file, address);
    setWrong(why);
    if (why === null) act(setAuthor, { logo: address });
  };
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        keep();
        close();
      }}
    >
      <TextField className="field" value={name} onChange={setName} onBlur={keep} autoFocus>
        <Label>{said.name}</Label>
        <Input autoComplete="name" />
      </TextField>
      <TextField className="field" value={text} onChange={setText} onBlur={keep}>
        <Label>{said.words}</Label>
        <TextArea rows={3} />
      </TextField>
      <h3>{said.logo}</h3>
      {author.logo && <img className="logo-shown" src={author.logo} alt={said.logo} />}
      <div className="row">
        <FileTrigger acceptedFileTypes={LOGO_TYPES} onSelect={choose}>
          <Do>{said.chooseLogo}</Do>
        </FileTrigger>
        {author.logo && <Do onPress={() => act(setAuthor, { logo: null })}>{said.removeLogo}</Do>}
      </div>
      {wrong && (
        <p className="slip-wrong" role="alert">
          {wrong}
        </p>
      )}
      <div className="row">
        <Do main type="submit">
          {words.controls.set}
        </Do>
      </div>
    </form>
  );
}
