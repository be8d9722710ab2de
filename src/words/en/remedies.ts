/** Ways out of a finding, as their buttons say it. */
export const remedyWords = {
  stake: {
    leaveWhole: 'Leave the stake whole',
    leaveOut: 'Leave the added stake out',
    split: 'Split a stake',
    add: 'Add a stake',
  },
  spoke: {
    leaveWhole: 'Leave the spoke whole',
    leaveOut: 'Leave the added spoke out',
    split: 'Split a spoke',
    add: 'Add half a spoke',
  },
  oneMoreInSlot: 'One stake more in the slot',
  weave: {
    chased: 'Chase two weavers',
    rounds: 'Weave rows that start and stop',
    continuous: 'Weave with one weaver, round and round',
  },
};
