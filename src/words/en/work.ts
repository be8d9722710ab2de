/** Why a basket was not settled, as far as the worker is at fault. */
export const workWords = {
  noAnswer: (seconds: number) => `no answer after ${seconds} seconds`,
  notStarted: (why: string) => `the worker could not be started: ${why}`,
  stopped: 'the worker stopped',
  unreadable: 'the answer could not be read',
  atRow: (row: number, why: string) => `row ${row}: ${why}`,
};
