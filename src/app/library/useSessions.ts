import { useCallback, useEffect, useState } from 'react';
import type { Database } from '../../session/database';
import { clearDeleted, KEPT_DELETED, type Listed, listSessions } from '../../session/library';
import { sessions as said } from '../words/sessions.en';

const why = (error: unknown): string =>
  error instanceof DOMException && error.name === 'QuotaExceededError' ? said.full : said.failed;

export interface Sessions {
  /** Null until they are fetched. */
  readonly listed: readonly Listed[] | null;
  /** What came of the last thing done; empty when that shows by itself. */
  readonly told: readonly string[];
  /** Does something with the store, telling what came of it, and lists anew. */
  run(work: (tell: (...sentences: string[]) => void) => Promise<unknown>): void;
}

/** The sessions of the browser's store. `flush` saves what is on the page before they are listed. */
export function useSessions(database: Database | null, flush: () => Promise<void>): Sessions {
  const [listed, setListed] = useState<readonly Listed[] | null>(null);
  const [told, setTold] = useState<readonly string[]>([]);
  const run = useCallback<Sessions['run']>(
    (work) => {
      if (!database) return;
      const all = async () => {
        let told: readonly string[] = [];
        await work((...sentences) => {
          told = sentences;
        });
        setListed(await listSessions(database));
        setTold(told);
      };
      all().catch((error) => setTold([why(error)]));
    },
    [database],
  );
  useEffect(() => {
    run(async () => {
      await flush();
      if (database) await clearDeleted(database, Date.now() - KEPT_DELETED);
    });
  }, [run, flush, database]);
  return { listed, told, run };
}
