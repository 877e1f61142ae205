import { useEffect, useState } from 'react';
import { chooseEncoding, type Encoding } from '../../../handout/clip/encoding';
import type { FrameSize } from '../../../handout/clip/layout';

/** What the browser makes of a clip of this size; 'asking' until it has answered, null where it cannot. */
export function useEncoding({ width, height }: FrameSize): Encoding | null | 'asking' {
  const [answer, setAnswer] = useState<{ key: string; encoding: Encoding | null } | null>(null);
  const key = `${width} ${height}`;
  useEffect(() => {
    let wanted = true;
    chooseEncoding({ width, height }).then((encoding) => {
      if (wanted) setAnswer({ key: `${width} ${height}`, encoding });
    });
    return () => {
      wanted = false;
    };
  }, [width, height]);
  return answer?.key === key ? answer.encoding : 'asking';
}
