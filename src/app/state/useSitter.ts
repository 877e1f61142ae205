import { useEffect, useMemo, useState } from 'react';
import { sculptureUrls } from '../../models/browser';
import type { Models } from '../../models/types';
import { known } from '../../session/known';
import type { Session } from '../../session/types';
import { buildSitter } from '../../sitter/build';
import { loadSculpture } from '../../sitter/load';
import type { Sculpture } from '../../sitter/sculpture';
import type { Sitter } from '../../sitter/types';

const fetched = new Map<string, Promise<Sculpture>>();

/** Fetches and decodes a sculpture once. A failed fetch is forgotten, so that it can be tried again. */
function sculptureOf(name: string): Promise<Sculpture> {
  const known = fetched.get(name);
  if (known) return known;
  const promise = (async () => {
    const url = sculptureUrls[`${name}.glb`];
    if (!url) throw new Error(`no sculpture is called "${name}"`);
    const response = await fetch(url);
    if (!response.ok) throw new Error(`${response.status} ${response.statusText}`);
    return loadSculpture(new Uint8Array(await response.arrayBuffer()));
  })();
  promise.catch(() => fetched.delete(name));
  fetched.set(name, promise);
  return promise;
}

export interface SitterState {
  /** The session's sitter; while another one is fetched, null. */
  readonly sitter: Sitter | null;
  /** Why there is none. */
  readonly failed: string | null;
}

/** The sitter of a session, built anew when the person, a dimension or the pose changes. */
export function useSitter(
  { model, changes, pose }: Session['sitter'],
  models: Models,
): SitterState {
  const description = known(models.sitters, model);
  const [loaded, setLoaded] = useState<{ name: string; sculpture: Sculpture } | null>(null);
  const [failed, setFailed] = useState<string | null>(null);
  const name = description.sculpture;

  useEffect(() => {
    let wanted = true;
    setFailed(null);
    sculptureOf(name).then(
      (sculpture) => wanted && setLoaded({ name, sculpture }),
      (error: unknown) =>
        wanted && setFailed(error instanceof Error ? error.message : String(error)),
    );
    return () => {
      wanted = false;
    };
  }, [name]);

  return useMemo(() => {
    if (loaded?.name !== name) return { sitter: null, failed };
    try {
      return { sitter: buildSitter(loaded.sculpture, description, changes, pose), failed: null };
    } catch (error) {
      return { sitter: null, failed: error instanceof Error ? error.message : String(error) };
    }
  }, [loaded, name, description, changes, pose, failed]);
}
