/** English words that all sheets of things to take away share; each sheet has a file of its own beside this. */
export const takeAway = {
  sheets: {
    stills: 'Stills',
    clip: 'Clip',
    moving: 'Moving page',
    table: 'Table and charts',
  },
  rendering: (percent: string, left: string | null) =>
    left === null ? `${percent} done` : `${percent} done, ${left} left`,
  seconds: (n: number) => (n === 1 ? '1 second' : `${n} seconds`),
  minutes: (n: number) => (n === 1 ? '1 minute' : `${n} minutes`),
  stopped: 'Stopped. Nothing was saved.',
};
