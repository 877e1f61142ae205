import { useEffect, useRef } from 'react';

/** Tells that the browser's own Escape ended the full screen: the page does not see that key. */
export function useFullScreenLeft(left: () => void): void {
  const latest = useRef(left);
  latest.current = left;
  useEffect(() => {
    const onChange = () => {
      if (!document.fullscreenElement) latest.current();
    };
    document.addEventListener('fullscreenchange', onChange);
    return () => document.removeEventListener('fullscreenchange', onChange);
  }, []);
}
