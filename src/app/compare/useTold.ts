import { useEffect, useState } from 'react';
import type { Speaking } from '../../readings/read';
import type { Shown } from './shown';

/** A picture told in words. The words are fetched after the first picture, which does not wait for them. */
export function useTold(shown: Shown, speaking: Speaking): string {
  const [tell, setTell] = useState<typeof import('./told').tell | null>(null);
  useEffect(() => {
    import('./told').then((module) => setTell(() => module.tell));
  }, []);
  return tell ? tell(shown, speaking) : '';
}
