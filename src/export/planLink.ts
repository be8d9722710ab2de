/** A plan as the part of an address after #, which a browser sends to nobody, and back. */
import { deflateSync, Inflate, strFromU8, strToU8 } from 'fflate';
import { planLinkWords } from '#words/planLink.ts';
import type { PlanReading } from '../plan/read.ts';
import { longestText, readPlan } from '../plan/read.ts';
import type { Plan } from '../plan/schema.ts';
import { linkMark } from './linkMark.ts';

/** The one way there is to pack a plan; another one would get another number. */
const packing = '1';

/** The part of an address that carries `plan`, from its #. */
export function planFragment(plan: Plan): string {
  const bytes = deflateSync(strToU8(JSON.stringify(plan)), { level: 9 });
  const data = toBase64url(bytes);
  return `${linkMark}${packing}.${checkOf(data)}.${data}`;
}

/** The plan of the part after #, or why there is none: checked like a file. */
export function readFragment(fragment: string): PlanReading {
  const file = planLinkWords.link;
  const [number, check, data] = fragment.slice(linkMark.length).split('.');
  const allowed = planLinkWords.wholeLink;
  const refuse = (found: string): PlanReading => ({
    ok: false,
    problems: [{ file, path: '', found, allowed }],
  });
  if (number !== packing && /^\d+$/.test(number ?? '')) {
    return refuse(planLinkWords.newer);
  }
  if (number !== packing || !data || checkOf(data) !== check) {
    return refuse(planLinkWords.cutShort);
  }
  try {
    return readPlan(unpacked(fromBase64url(data)), file);
  } catch {
    return refuse(planLinkWords.notUnpacked);
  }
}

/** The text that was packed. Throws for what is none, and for more than any plan takes. */
function unpacked(bytes: Uint8Array): string {
  let length = 0;
  const parts: Uint8Array[] = [];
  const inflate = new Inflate((part) => {
    length += part.length;
    if (length > longestText) throw new RangeError('more than a plan');
    parts.push(part);
  });
  // in small steps, so that a link made to swell is stopped before it has swollen
  for (let at = 0; at < bytes.length; at += stepLength) {
    inflate.push(bytes.slice(at, at + stepLength), at + stepLength >= bytes.length);
  }
  const whole = new Uint8Array(length);
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return strFromU8(whole);
}

const stepLength = 256;

function toBase64url(bytes: Uint8Array): string {
  const text = Array.from(bytes, (byte) => String.fromCharCode(byte)).join('');
  return btoa(text).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '');
}

function fromBase64url(text: string): Uint8Array {
  const plain = atob(text.replaceAll('-', '+').replaceAll('_', '/'));
  return Uint8Array.from(plain, (letter) => letter.charCodeAt(0));
}

/** Seven letters and figures that tell a link from one with a letter changed (FNV-1a). */
function checkOf(text: string): string {
  let hash = 0x811c9dc5;
  for (let at = 0; at < text.length; at += 1) {
    hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193) >>> 0;
  }
  return hash.toString(36).padStart(7, '0');
}
