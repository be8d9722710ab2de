/** Ways out of a finding: what their buttons say, and what is undone when one that was taken is undone. */
export const remedyWords = {
  stake: {
    leaveWhole: { label: 'Leave the stake whole', act: 'leaving the stake whole' },
    leaveOut: { label: 'Leave the added stake out', act: 'leaving the added stake out' },
    split: { label: 'Split a stake', act: 'splitting a stake' },
    add: { label: 'Add a stake', act: 'adding a stake' },
  },
  spoke: {
    leaveWhole: { label: 'Leave the spoke whole', act: 'leaving the spoke whole' },
    leaveOut: { label: 'Leave the added spoke out', act: 'leaving the added spoke out' },
    split: { label: 'Split a spoke', act: 'splitting a spoke' },
    add: { label: 'Add half a spoke', act: 'adding half a spoke' },
  },
  oneMoreInSlot: { label: 'One stake more in the slot', act: 'one stake more in the slot' },
  weave: {
    chased: { label: 'Chase two weavers', act: 'chasing two weavers' },
    rounds: {
      label: 'Weave rows that start and stop',
      act: 'weaving rows that start and stop',
    },
    continuous: {
      label: 'Weave with one weaver, round and round',
      act: 'weaving with one weaver',
    },
  },
};
