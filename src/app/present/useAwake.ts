import { useEffect } from 'react';

/** Keeps the screen from going to sleep over a slide, where the browser allows it. */
export function useAwake(): void {
  useEffect(() => {
    let lock: WakeLockSentinel | null = null;
    let open = true;
    const hold = async () => {
      // A browser takes the lock back whenever the page is hidden.
      if (document.visibilityState !== 'visible') return;
      try {
        const given = await navigator.wakeLock?.request('screen');
        if (open) lock = given ?? null;
        else await given?.release();
      } catch {
        // refused, for one by a battery that runs low
      }
    };
    void hold();
    document.addEventListener('visibilitychange', hold);
    return () => {
      open = false;
      document.removeEventListener('visibilitychange', hold);
      lock?.release().catch(() => undefined);
    };
  }, []);
}
