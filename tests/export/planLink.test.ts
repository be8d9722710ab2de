import fc from 'fast-check';
import { deflateSync } from 'fflate';
import { expect, test } from 'vitest';
import { planFragment, readFragment } from '../../src/export/planLink.ts';
import { demos } from '../../src/plan/demo/demos.ts';
import { problemText } from '../../src/plan/problems.ts';
import { anyPlan } from '../plan/plans.ts';

const { plan } = demos[0];

function refusal(fragment: string): string {
  const reading = readFragment(fragment);
  if (reading.ok) throw new Error('it was read');
  return reading.problems.map(problemText).join('\n');
}

test('any plan comes through a link as it was, in letters that an address may have', () => {
  fc.assert(
    fc.property(anyPlan, (one) => {
      const fragment = planFragment(one);
      expect(fragment).toMatch(/^#plan=1\.[0-9a-z]{7}\.[\w-]+$/);
      expect(readFragment(fragment)).toEqual({ ok: true, plan: one });
    }),
  );
});

test('the links of the demos are short enough to be sent', () => {
  for (const demo of demos) expect(planFragment(demo.plan).length).toBeLessThan(1200);
});

test('names and notes of any script come through', () => {
  const named = { ...plan, name: '栗かご “Üppig” 🧺', notes: '<b>no</b>\n& so on' };
  expect(readFragment(planFragment(named))).toEqual({ ok: true, plan: named });
});

test('a link with a letter changed or lost is never taken for another plan', () => {
  const fragment = planFragment(plan);
  const spoilt = fc
    .tuple(
      fc.integer({ min: 6, max: fragment.length - 1 }),
      fc.constantFrom('', 'A', 'z', '0', '-'),
    )
    .map(([at, put]) => fragment.slice(0, at) + put + fragment.slice(at + 1));
  fc.assert(
    fc.property(spoilt, (one) => {
      fc.pre(one !== fragment);
      expect(refusal(one)).toMatch(/^this link: the whole document: found a link /);
    }),
    { numRuns: 1000 },
  );
  expect(refusal(fragment.slice(0, -40))).toContain('cut short');
  expect(refusal('#plan=')).toContain('cut short');
});

test('a link of a newer Girthline says so', () => {
  expect(refusal(planFragment(plan).replace('=1.', '=2.'))).toContain('a newer Girthline');
});

test('a plan in a link is checked like a file', () => {
  const wide = { ...plan, set: { stakes: 7 } };
  expect(refusal(planFragment(wide))).toMatch(/^this link: set\.stakes: found 7, allowed is/);
});

test('a link made to swell is stopped', () => {
  // what a plan cannot be: three million spaces in three kilobytes
  const bomb = deflateSync(new Uint8Array(3_000_000).fill(32), { level: 9 });
  const fragment = planFragment(plan);
  const data = Buffer.from(bomb).toString('base64url');
  // the check of a link is no secret, so one is made that passes it
  let hash = 0x811c9dc5;
  for (const letter of data) hash = Math.imul(hash ^ letter.charCodeAt(0), 0x01000193) >>> 0;
  const check = hash.toString(36).padStart(7, '0');
  expect(fragment).toContain('#plan=1.');
  expect(refusal(`#plan=1.${check}.${data}`)).toContain('cannot be unpacked');
});
